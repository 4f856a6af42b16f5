package stoneprocess.rules.text;

import static stoneprocess.rules.text.ValueWords.grade;
import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.estimate.HighSpots;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** The first page of a plan: the answer, what to ask first, what stops the work, each hazard by name, and the table. */
record PlanFront(Draft draft, Recommendation recommendation) {
    private static final int QUESTIONS_THAT_MATTER_MOST = 3;
    private static final int QUESTIONS_ON_A_VISIT = 15;

    static void write(Draft draft, Recommendation recommendation, PlanWords words, PlanTotals totals) {
        PlanFront front = new PlanFront(draft, recommendation);
        Optional<Plan> cutting = recommendation.plan().filter(plan -> PlanWords.isCutTold(recommendation));
        draft.paragraph(front.answer());
        front.ask();
        front.stop(cutting.isPresent());
        front.care();
        cutting.ifPresent(plan -> {
            StepNotes notes = new StepNotes(plan, words);
            draft.section(recommendation.status() == Status.PLANNED ? "table.heading" : "table.heading-held")
                    .add(StepTable.of(plan, notes, totals));
            List<Wording> legend = new ArrayList<>(List.of(notes.tools()));
            if (!notes.hasLitres()
                    && !recommendation.survey().answer(SurveyField.AREA).isKnown()) {
                legend.add(phrase("table.no-litres"));
            }
            totals.job().stream()
                    .flatMap(job -> job.steps().stream())
                    .forEach(step ->
                            step.highSpots().ifPresent(spots -> legend.add(proud(plan, step.passes(), spots))));
            if (notes.isGlossRead()) {
                legend.add(phrase("table.gloss"));
            }
            if (notes.isReduced()) {
                legend.add(phrase("table.reduced"));
            }
            front.labelled("table.tools", legend);
            totals.bring().ifPresent(machine -> draft.section("front.bring").paragraph(machine));
        });
    }

    /** A first cut that takes waves or lips down gives all its passes only where the floor stands proud. */
    private static Wording proud(Plan plan, Range<Integer> passes, HighSpots spots) {
        return phrase("table.proud")
                .with("grit", grade(plan.tracks().get(0).steps().get(0).grade()))
                .with("passes", StepTable.passes(passes))
                .with("share", new Share(Math.rint(spots.share().percent())))
                .with("elsewhere", StepTable.passes(spots.passes()));
    }

    /** Whether there is a plan, with its finish and its grits. */
    Wording answer() {
        Wording status = PlanWords.verdict(recommendation);
        return recommendation
                .plan()
                .map(plan -> Wording.sentences(status, summary(plan)))
                .orElse(status);
    }

    private Wording summary(Plan plan) {
        if (!PlanWords.isCutTold(recommendation)) {
            boolean cleaned =
                    recommendation.values(Topics.FIRST_CUT, Subject.OPEN_FIELD).isEmpty();
            return cleaned ? phrase("summary.nothing-is-cut") : noCut();
        }
        Track first = plan.tracks().get(0);
        Wording finish = plan.finish()
                .map(wanted -> PlanWords.stating(StatedValue.ofFloor(Topics.FINISH, wanted.key()), aim(wanted)))
                .orElse(Wording.name(""));
        List<PlannedStep> steps = first.steps();
        PlannedStep last = steps.get(steps.size() - 1);
        Wording grits = steps.size() < 3
                ? PlanSections.grades(first)
                : phrase("front.grits")
                        .with("first", grade(steps.get(0).grade()))
                        .with("last", grade(last.grade()));
        return phrase(first.kind() == TrackKind.OPEN_FIELD ? "summary.cuts" : "summary.field-stays")
                .with("finish", finish)
                .with("grits", withThoseByHand(plan, grits));
    }

    /** What edges and repairs take besides the grits of the first track. */
    private static Wording withThoseByHand(Plan plan, Wording grits) {
        List<AbrasiveGrade> first =
                plan.tracks().get(0).steps().stream().map(PlannedStep::grade).toList();
        List<Wording> others = plan.tracks().stream()
                .flatMap(track -> track.steps().stream())
                .map(PlannedStep::grade)
                .filter(grade -> !first.contains(grade))
                .distinct()
                .sorted(Comparator.comparing(AbrasiveGrade::bond).thenComparing(AbrasiveGrade::number))
                .map(ValueWords::grade)
                .toList();
        return others.isEmpty()
                ? grits
                : phrase("front.by-hand").with("grits", grits).with("others", Wording.list(Joint.COMMA, others));
    }

    /** Why no cut is told. */
    private Wording noCut() {
        List<DamageKind> uncounted = List.copyOf(recommendation.withoutShare());
        if (PlanWords.isFinishOpen(recommendation)) {
            return phrase("summary.no-cut-until-named");
        }
        if (!uncounted.isEmpty()) {
            return phrase("summary.no-cut-until-counted")
                    .with("damages", Wording.list(Joint.COMMA, uncounted, ValueWords::name));
        }
        boolean looked = recommendation.questions().stream().noneMatch(asked -> FieldWords.isDamage(asked.field()));
        return phrase(looked ? "summary.no-cut-yet" : "summary.no-cut-until-inspected");
    }

    /** What the grits on hand give; a floor that is only to be better keeps its finish; a wish that nobody named or read off the sample is told as open. */
    private Wording aim(Finish finish) {
        if (recommendation.values(Topics.SHORTFALLS, Subject.FLOOR).contains(Shortfall.NO_GRIT_FOR_SATIN)) {
            return phrase("summary.satin-lacks-grit");
        }
        FloorSurvey survey = recommendation.survey();
        Optional<Goal> goal = survey.answer(SurveyField.GOAL).value();
        boolean read = survey.answer(SurveyField.GOAL_GLOSS).isKnown();
        if (goal.isEmpty() || goal.get() == Goal.MATCH_SAMPLE && !read) {
            return phrase("summary.finish-open").with("finish", Wording.of(finish));
        }
        return goal.get() == Goal.JUST_BETTER ? Wording.of(goal.get()) : Wording.of(finish);
    }

    private void ask() {
        List<Question> questions = asked();
        long shown = shown();
        List<Wording> words = new ArrayList<>();
        questions.stream()
                .limit(shown)
                .forEach(question -> words.add(FieldWords.question(recommendation.survey(), question.field())));
        if (!PlanWords.isCleared(recommendation) && !questions.isEmpty()) {
            words.add(0, phrase("front.untouched"));
        }
        int listed = visit().size();
        if (listed > 0) {
            words.add(phrase("front.visit-questions").with("more", listed));
        }
        labelled("front.ask", words);
    }

    /** What a laboratory answers first, but not of a stone that nobody suspects; what abrades or wets the stone last. */
    private int risk(Question question) {
        boolean ofTheStone = question.field().equals(SurveyField.LABORATORY.name());
        boolean suspected =
                recommendation.warnings().stream().anyMatch(warning -> warning.hazard() == Hazard.FIBROUS_STONE);
        return FieldWords.howItIsFound(question.field())
                .map(how -> switch (how) {
                    case LABORATORY -> ofTheStone && !suspected ? 2 : 0;
                    case ACID, SCRIBER, SCRAPE, SOLVENT, TRIAL -> 2;
                    default -> 1;
                })
                .orElse(1);
    }

    private long shown() {
        long decisive = asked().stream().filter(Question::isDecisive).count();
        return Math.max(1, Math.min(QUESTIONS_THAT_MATTER_MOST, decisive));
    }

    private List<Question> asked() {
        return recommendation.questions().stream()
                .filter(question -> recommendation.status() != Status.IMPASSE || question.isDecisive())
                .sorted(Comparator.comparing(question -> PlanWords.isCleared(recommendation) ? 0 : risk(question)))
                .toList();
    }

    /** The questions that are put on the visit, those on the first screen left out. */
    private List<Question> visit() {
        long shown = shown();
        return asked().stream()
                .skip(shown)
                .filter(Question::isWeighty)
                .limit(QUESTIONS_ON_A_VISIT - shown)
                .toList();
    }

    /** In brief, what else is asked on the visit, and how many questions are left that change no more than details. */
    static void visit(Draft draft, Recommendation recommendation) {
        PlanFront front = new PlanFront(draft, recommendation);
        List<Question> visit = front.visit();
        if (visit.isEmpty()) {
            return;
        }
        List<Wording> asked = new ArrayList<>();
        visit.forEach(question -> asked.add(FieldWords.question(recommendation.survey(), question.field())));
        long left = front.asked().size() - visit.size() - front.shown();
        if (left > 0) {
            asked.add(phrase("questions.left").with("more", (int) left));
        }
        draft.section("questions.visit").paragraph(Wording.list(Joint.SENTENCES, asked));
    }

    private void labelled(String label, List<Wording> sentences) {
        if (!sentences.isEmpty()) {
            draft.labelled(label, Wording.list(Joint.SENTENCES, sentences));
        }
    }

    private void stop(boolean cuts) {
        List<Wording> words = hazards(HazardRank.STOPS_THE_WORK, HazardRank.SETTLE_FIRST);
        if (recommendation.plan().isPresent()) {
            words.add(phrase(cuts ? "front.stop-cutting" : "front.stop"));
        }
        labelled("front.stops", words);
    }

    private void care() {
        labelled("front.care", hazards(HazardRank.ADDED_HERE, HazardRank.STANDING, HazardRank.NOT_CHECKED));
    }

    private List<Wording> hazards(HazardRank... ranks) {
        List<Wording> words = new ArrayList<>();
        for (HazardRank rank : ranks) {
            List<SafetyWarning> warnings = rank.of(recommendation.warnings());
            if (!warnings.isEmpty()) {
                words.add(Wording.of(rank).with("hazards", WarningWords.names(warnings)));
            }
        }
        return words;
    }
}
