package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import stoneprocess.core.answer.NotPlanned;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.LaneStart;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What a plan asks for beside its table, in the order of the work. */
record PlanSections(Draft draft, Plan plan, PlanWords words, boolean gated) {
    /** What scrapes, strips, abrades or lifts, and so waits until nothing is suspect. */
    private static final Set<Task> OPENING = EnumSet.of(
            Task.TEST_STONE,
            Task.TEST_FOR_FILM,
            Task.TRY_ON_RESIN,
            Task.CLEANING_TRIAL,
            Task.TERRAZZO_TRIALS,
            Task.DRY_CLEAN_SALTS,
            Task.STRIP_COATING,
            Task.STRIP_NEARLY_DRY,
            Task.REMOVE_FILM,
            Task.TRY_DENSIFIER,
            Task.RELAY_LIPPED,
            Task.FIX_HOLLOW,
            Task.FILL_CRACKS,
            Task.LEVEL_STRIPS,
            Task.REGROUT,
            Task.SEMI_RIGID_JOINTS,
            Task.ELASTIC_JOINTS);

    /** What settles a question or dries the floor, on which the release may hang; all else prepares a cut. */
    private static final Set<Task> BEFORE_RELEASE = EnumSet.of(
            Task.CALL_SPECIALIST,
            Task.CONSULT_CONSERVATOR,
            Task.TEST_STONE,
            Task.TEST_FOR_FILM,
            Task.TRY_ON_STRIP,
            Task.TRY_ON_RESIN,
            Task.CLEANING_TRIAL,
            Task.TERRAZZO_TRIALS,
            Task.CONFIRM_FLOOR_LOAD,
            Task.WATCH_CRACKS,
            Task.WATCH_SETTLEMENT,
            Task.FIND_MOISTURE,
            Task.MEND_LEAK,
            Task.SHUT_OFF_AND_DRY,
            Task.LET_DRY,
            Task.LET_CURE,
            Task.SHELTER_FROM_FROST,
            Task.TRY_DENSIFIER,
            Task.SURVEY_APART,
            Task.DATA_SHEET);

    private static final Set<Upkeep> PAD_FREQUENCIES = EnumSet.range(Upkeep.PAD_WEEKLY, Upkeep.PAD_QUARTERLY);

    static void write(Draft draft, Recommendation recommendation, Plan plan, PlanWords words, PlanTotals totals) {
        PlanSections sections = new PlanSections(draft, plan, words, !PlanWords.isCleared(recommendation));
        sections.orders("acceptances.heading", sections.words(Topics.ACCEPTANCES, plan.acceptances()));
        boolean told = PlanWords.isCutTold(recommendation);
        boolean cleaned = recommendation.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.CLEAN_ONLY);
        sections.preparation(!told && !cleaned);
        sections.orders("repairs.heading", sections.words(Topics.REPAIRS, plan.repairs()));
        notPlanned(draft, recommendation, words);
        sections.testArea(recommendation.survey(), told);
        sections.orders("shortfalls.heading", sections.words(Topics.SHORTFALLS, plan.shortfalls()));
        if (told) {
            draft.list("starts.heading", plan.starts(), PlanSections::start);
            sections.cuts();
        }
        sections.orders("slurry.heading", sections.words(Topics.SLURRY, plan.slurry()));
        sections.finishing(recommendation);
        sections.orders(sections.gated("upkeep.heading"), sections.upkeep());
        totals.words().ifPresent(line -> {
            draft.section("totals.heading").paragraph(line);
            totals.late(recommendation.survey()).ifPresent(draft::paragraph);
        });
        openDeadline(draft, recommendation, totals);
    }

    static void openDeadline(Draft draft, Recommendation recommendation, PlanTotals totals) {
        totals.openDeadline(recommendation)
                .ifPresent(open -> draft.section("deadline.heading").paragraph(open));
    }

    /** The key of a heading that says, while something is suspect, that the laboratory comes before what stands under it. */
    private String gated(String heading) {
        return gated ? heading + ".gated" : heading;
    }

    private List<Wording> words(Topic<?> topic, List<? extends Term> terms) {
        return terms.stream().map(term -> words.ofFloor(topic, term)).toList();
    }

    /** Short sentences, which run on in one paragraph of the short page. */
    private void orders(String heading, List<Wording> orders) {
        if (orders.isEmpty()) {
            return;
        }
        draft.section(words.phrase(heading));
        if (words.isBrief()) {
            draft.paragraph(Wording.list(Joint.SENTENCES, orders));
        } else {
            draft.bullets(orders, Function.identity());
        }
    }

    /** What keeps the floor; how often the pad of the last grit runs is said with it. */
    private List<Wording> upkeep() {
        List<Wording> upkeep = new ArrayList<>();
        for (Upkeep care : plan.upkeep()) {
            Wording said = words.ofFloor(Topics.UPKEEP, care);
            int last = upkeep.size() - 1;
            if (PAD_FREQUENCIES.contains(care) && plan.upkeep().contains(Upkeep.LAST_PAD_UPKEEP)) {
                upkeep.set(last, sentences(upkeep.get(last), said));
            } else {
                upkeep.add(said);
            }
        }
        return upkeep;
    }

    private static Wording start(LaneStart start) {
        return phrase("starts.start").with("zone", start.zone()).with("grit", ValueWords.grade(start.grade()));
    }

    /** All that was told and waits, with a plan or without one. */
    static void notPlanned(Draft draft, Recommendation recommendation, PlanWords words) {
        Optional<SafetyWarning> historic = recommendation.warnings().stream()
                .filter(warning -> warning.hazard() == Hazard.HISTORIC_FABRIC)
                .findFirst();
        draft.list(
                "not-planned.heading",
                NotPlanned.of(recommendation),
                left -> phrase("not-planned.damage")
                        .with("damage", ValueWords.name(left.what()))
                        .with("why", Wording.of(left.why()))
                        .with("treatment", treatment(left, historic, words)));
    }

    /** A historic floor loses nothing that it could not get back; where nobody knows whether it is one, both are told. */
    private static Wording treatment(NotPlanned left, Optional<SafetyWarning> historic, PlanWords words) {
        String key = Wording.key(left.what()) + ".treatment";
        Wording.Phrase usual = words.phrase(key);
        Wording.Phrase gentle = Wording.phrase(key + ".historic");
        if (historic.isEmpty() || !Language.english().has(gentle.key())) {
            return usual;
        }
        return historic.get().certain()
                ? gentle
                : phrase("not-planned.either").with("gentle", gentle).with("usual", usual);
    }

    /** The grits of a track. */
    static Wording grades(Track track) {
        return Wording.list(Joint.COMMA, track.steps(), step -> ValueWords.grade(step.grade()));
    }

    private void list(String heading, Topic<?> topic, Collection<? extends Term> terms) {
        words.list(draft, heading, topic, terms);
    }

    /** While no cut is told, what does not hang on the release comes first, and the rest under a heading of its own. */
    private void preparation(boolean waits) {
        boolean densified = plan.densifier() == Densifier.BEFORE_CUTS;
        List<Preparation> steps = plan.preparation().stream()
                .filter(step -> !PlanText.AT_ONCE.contains(step.task()))
                .toList();
        if (!steps.isEmpty() || densified) {
            draft.section("preparation.heading");
        }
        if (plan.tasks().contains(Task.STOP_AND_SAMPLE) && !steps.isEmpty()) {
            draft.numbered(words.phrase("preparation.sampled"));
        }
        steps.stream()
                .filter(step -> !waits || BEFORE_RELEASE.contains(step.task()))
                .forEach(step -> draft.numbered(preparation(step)));
        if (waits) {
            List<Preparation> later = steps.stream()
                    .filter(step -> !BEFORE_RELEASE.contains(step.task()))
                    .toList();
            if (!later.isEmpty()) {
                draft.section("preparation.released");
                later.forEach(step -> draft.numbered(preparation(step)));
            }
        }
        if (densified) {
            draft.numbered(densifier());
        }
    }

    private Wording preparation(Preparation preparation) {
        List<Wording> said = new ArrayList<>(List.of(words.ofFloor(Topics.PREPARATION, preparation.task())));
        if (gated && OPENING.contains(preparation.task())) {
            said.add(0, words.phrase("preparation.gate"));
        }
        preparation.rest().ifPresent(rest -> said.add(wait(preparation.task(), rest)));
        return sentences(said.toArray(Wording[]::new));
    }

    /** A task that lays pieces tells the wait by its bed. */
    private Wording wait(Task task, Range<TimeSpan> rest) {
        String own = Wording.key(task) + ".wait";
        if (!Language.english().has(own)) {
            return words.phrase("preparation.wait").with("time", rest);
        }
        return rest.low().equals(rest.high())
                ? words.phrase(own + ".mortar").with("time", rest.low())
                : words.phrase(own);
    }

    private Wording densifier() {
        return words.ofFloor(Topics.DENSIFIER, plan.densifier());
    }

    private void testArea(FloorSurvey survey, boolean told) {
        if (plan.testArea() != TestArea.REQUIRED) {
            return;
        }
        if (!told) {
            orders(
                    "test-area.heading",
                    List.of(PlanWords.stating(
                            StatedValue.ofFloor(
                                    Topics.TEST_AREA, plan.testArea().key()),
                            phrase("test-area.no-cut-yet"))));
            return;
        }
        List<Wording> trial = new ArrayList<>(List.of(words.ofFloor(Topics.TEST_AREA, plan.testArea())));
        if (plan.testCuts().size() > 1) {
            boolean field = plan.tracks().stream().anyMatch(track -> track.kind() == TrackKind.OPEN_FIELD);
            trial.add(words.phrase(field ? "test-area.cuts" : "test-area.cuts-places")
                    .with("first", testCut(plan.testCuts().get(0)))
                    .with("second", testCut(plan.testCuts().get(1))));
        }
        if (plan.tracks().stream()
                .flatMap(track -> track.steps().stream())
                .anyMatch(step -> step.checks().contains(Check.WET_SLIP))) {
            trial.add(words.of(Check.WET_SLIP));
        }
        trial.addAll(baseline(survey.readings()));
        orders("test-area.heading", trial);
    }

    private static Wording testCut(AbrasiveGrade grade) {
        return PlanWords.stating(StatedValue.ofFloor(Topics.TEST_CUTS, grade.key()), ValueWords.grade(grade));
    }

    /** A line for each angle and state of the surface, with all zones that were read so. */
    private List<Wording> baseline(List<GlossReading> readings) {
        Map<Wording.Phrase, List<Wording>> zones = new LinkedHashMap<>();
        readings.forEach(reading -> zones.computeIfAbsent(
                        words.phrase("test-area.baseline")
                                .with("angle", reading.geometry().degrees())
                                .with("state", reading.state()),
                        key -> new ArrayList<>())
                .add(phrase("test-area.reading").with("zone", reading.zone()).with("gloss", reading.gloss())));
        return zones.entrySet().stream()
                .<Wording>map(read -> read.getKey().with("zones", Wording.list(Joint.COMMA, read.getValue())))
                .toList();
    }

    private void cuts() {
        StepNotes notes = new StepNotes(plan, words);
        Wording checks = Wording.list(Joint.SENTENCES, notes.always(Topics.CHECKS, PlannedStep::checks));
        List<Wording> sometimes = new ArrayList<>(notes.sometimes());
        if (plan.densifier() == Densifier.AFTER_FINE_HONE || plan.densifier() == Densifier.AFTER_LAST_GRIT) {
            sometimes.add(densifier());
        }
        List<Wording> always = new ArrayList<>(notes.always(Topics.HANDLING, PlannedStep::handling));
        always.addAll(notes.always(Topics.PICK_UP, step -> List.of(step.pickUp())));
        always.add(words.phrase("always.passes"));
        orders("always.heading", always);
        draft.bullet(phrase("always.hold").with("checks", checks)).bullet(words.phrase("always.fails"));
        orders("notes.heading", sometimes);
    }

    /** Cleaning is all the work where nothing is cut, and stands in its order. */
    private void finishing(Recommendation recommendation) {
        List<Wording> tasks = new ArrayList<>();
        if (plan.polishingAgent() != PolishingAgent.NONE) {
            tasks.add(words.ofFloor(Topics.POLISHING_AGENT, plan.polishingAgent()));
        }
        tasks.addAll(finishTasks(task -> task.compareTo(FinishTask.MEASURE_SLIP) < 0));
        boolean later = plan.finishTasks().contains(FinishTask.SEAL_LATER);
        if (!later) {
            tasks.add(isSealerOpen(recommendation) ? openSealer() : words.ofFloor(Topics.SEALER, plan.sealer()));
        }
        if (!later && plan.sealer() == Sealer.IMPREGNATOR) {
            tasks.add(Wording.of(plan.sealer(), "check"));
        }
        tasks.addAll(finishTasks(task -> task.compareTo(FinishTask.MEASURE_SLIP) >= 0));
        recommendation
                .survey()
                .answer(SurveyField.SLIP)
                .value()
                .ifPresent(value -> tasks.add(phrase("finishing.slip-before").with("value", value)));
        if (plan.tracks().isEmpty()) {
            draft.section(words.phrase(gated("finishing.heading")));
            tasks.forEach(draft::numbered);
        } else {
            orders(gated("finishing.heading"), tasks);
        }
    }

    /** Nothing that is known speaks against a sealer; only what nobody answered does. */
    private boolean isSealerOpen(Recommendation recommendation) {
        List<Reason> reasons = recommendation
                .decision(Topics.SEALER, Subject.FLOOR)
                .map(Decision::won)
                .orElse(List.of());
        return plan.sealer() == Sealer.NONE
                && !reasons.isEmpty()
                && reasons.stream().noneMatch(Reason::certain);
    }

    private Wording openSealer() {
        return PlanWords.stating(
                StatedValue.ofFloor(Topics.SEALER, plan.sealer().key()), phrase("finishing.sealer-open"));
    }

    /** What is measured and handed over is the sealed floor. */
    private List<Wording> finishTasks(Predicate<FinishTask> which) {
        return words(
                Topics.FINISH_TASKS, plan.finishTasks().stream().filter(which).toList());
    }
}
