package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SizeClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/**
 * Words for what a plan decides, each with the value that it states.
 *
 * @param variants the endings of phrases that are said in place of the usual ones where the bundles have them
 * @param speeds how fast a machine is walked with each bond of the plan
 */
record PlanWords(List<String> variants, Wording speeds) {

    private static final String BRIEF = ".brief";

    private static final Set<Family> WITH_AGGREGATE =
            EnumSet.of(Family.CEMENT_TERRAZZO, Family.RESIN_TERRAZZO, Family.CONCRETE);

    private static final Set<Task> CURING =
            EnumSet.of(Task.RELAY_LIPPED, Task.FIX_HOLLOW, Task.FILL_CRACKS, Task.REGROUT, Task.SEMI_RIGID_JOINTS);

    static PlanWords of(Recommendation recommendation, Detail detail) {
        List<String> variants = new ArrayList<>();
        if (recommendation.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.CLEAN_ONLY)) {
            variants.add(".clean");
        }
        if (recommendation.values(Topics.STONE, Subject.FLOOR).stream().anyMatch(WITH_AGGREGATE::contains)) {
            variants.add(".aggregate");
        }
        if (recommendation.values(Topics.STONE, Subject.FLOOR).equals(List.of(Family.CONCRETE))) {
            variants.add(".concrete");
        }
        if (!isCutTold(recommendation)) {
            variants.add(".uncut");
        }
        FloorSurvey survey = recommendation.survey();
        if (survey.answer(SurveyField.SETTING).value().equals(Optional.of(Setting.OUTDOORS))) {
            variants.add(".outdoors");
        }
        if (survey.answer(SurveyField.WET_USE)
                .value()
                .filter(WetUse.WET_BAREFOOT::equals)
                .isPresent()) {
            variants.add(".wet-room");
        }
        if (survey.zones().stream().anyMatch(zone -> zone.kind() == ZoneKind.STAIR)) {
            variants.add(".treads");
        }
        if (KnownStone.of(recommendation).isPoured(survey)) {
            variants.add(".poured");
        }
        if (survey.isLanesAlone()) {
            variants.add(".lanes");
        }
        if (recommendation.warnings().stream()
                .anyMatch(warning -> warning.hazard() == Hazard.HISTORIC_FABRIC && !warning.certain())) {
            variants.add(".perhaps-historic");
        }
        recommendation.plan().ifPresent(plan -> variants.addAll(ofPlan(plan)));
        if (isCleared(recommendation)) {
            variants.add(".cleared");
        }
        if (isSmallFloor(recommendation)
                || recommendation.plan().filter(PlanWords::isSpots).isPresent()) {
            variants.add(".small");
        }
        if (isLargerThan(recommendation, "test-area-large.from")) {
            variants.add(".large");
        }
        if (detail == Detail.FULL) {
            return new PlanWords(variants, speeds(recommendation));
        }
        List<String> brief = new ArrayList<>();
        variants.forEach(variant -> brief.addAll(List.of(variant + BRIEF, variant)));
        brief.add(BRIEF);
        return new PlanWords(brief, speeds(recommendation));
    }

    /** As the estimate walks them, to 0.1 m/min. */
    private static Wording speeds(Recommendation recommendation) {
        CuttingClass stone = KnownStone.of(recommendation).cutting();
        List<Bond> bonds = recommendation.plan().stream()
                .flatMap(plan -> plan.tracks().stream())
                .flatMap(track -> track.steps().stream())
                .map(step -> step.grade().bond())
                .distinct()
                .sorted()
                .toList();
        return Wording.list(Joint.COMMA, bonds, bond -> {
            Range<Speed> walked = StepKind.of(bond).walked(stone, recommendation.parameters());
            return Wording.phrase("notes.walk")
                    .with("speed", Range.of(tenths(walked.low()), tenths(walked.high())))
                    .with("bond", bond);
        });
    }

    private static Speed tenths(Speed speed) {
        return new Speed(Math.rint(10 * speed.metresPerMinute()) / 10);
    }

    /** True where neither the stone nor a layer is suspect, so that nothing waits for a laboratory. */
    static boolean isCleared(Recommendation recommendation) {
        return recommendation.warnings().stream()
                .map(SafetyWarning::hazard)
                .noneMatch(EnumSet.of(Hazard.FIBROUS_STONE, Hazard.HAZARDOUS_LAYER)::contains);
    }

    /** The phrase for a key, without the condition that a laboratory comes first where nothing is suspect. */
    static Wording.Phrase clearedPhrase(String key, Recommendation recommendation) {
        String cleared = key + ".cleared";
        return Wording.phrase(isCleared(recommendation) && Language.english().has(cleared) ? cleared : key);
    }

    /** What a plan does without, so that no phrase tells of it, and what its phrases have to tell besides. */
    private static List<String> ofPlan(Plan plan) {
        List<String> without = new ArrayList<>();
        List<PlannedStep> steps =
                plan.tracks().stream().flatMap(track -> track.steps().stream()).toList();
        if (plan.sealer() == Sealer.NONE
                && plan.densifier() == Densifier.NONE
                && plan.preparation().stream().map(Preparation::task).noneMatch(CURING::contains)
                && steps.stream().noneMatch(step -> step.handling().contains(Handling.REGROUT_PITS))) {
            without.add(".nothing-cures");
        }
        if (!plan.finishTasks().contains(FinishTask.MEASURE_SLIP)) {
            without.add(".no-slip");
        }
        if (plan.finish().filter(finish -> finish.compareTo(Finish.POLISH) < 0).isPresent()) {
            without.add(".below-polish");
        }
        if (plan.polishingAgent() != PolishingAgent.NONE) {
            without.add(".powdered");
        }
        if (plan.tasks().contains(Task.CONSULT_CONSERVATOR)) {
            without.add(".historic");
        }
        if (plan.tasks().contains(Task.TRY_ON_RESIN)) {
            without.add(".on-resin");
        }
        if (steps.stream().map(PlannedStep::grade).distinct().count() == 1) {
            without.add(".one-grit");
        }
        return without;
    }

    private static boolean isSmallFloor(Recommendation recommendation) {
        Scale<SizeClass> sizes = Scale.of("floor-size", SizeClass.class, recommendation.parameters());
        return recommendation
                .survey()
                .answer(SurveyField.AREA)
                .value()
                .filter(area -> sizes.classify(area).compareTo(SizeClass.MIDDLE) < 0)
                .isPresent();
    }

    private static boolean isLargerThan(Recommendation recommendation, String limit) {
        Area from = recommendation.parameters().get(limit, Area.class);
        return recommendation
                .survey()
                .answer(SurveyField.AREA)
                .value()
                .filter(area -> area.compareTo(from) >= 0)
                .isPresent();
    }

    private static boolean isSpots(Plan plan) {
        return !plan.tracks().isEmpty()
                && plan.tracks().stream().allMatch(track -> track.kind() == TrackKind.LOCAL_REPAIR);
    }

    /**
     * Whether there are grits to tell: none while a damage is out of them because nobody said how much of the floor has it,
     * or while nobody named a finish.
     */
    static boolean isCutTold(Recommendation recommendation) {
        return recommendation.withoutShare().isEmpty()
                && !isFinishOpen(recommendation)
                && recommendation
                        .plan()
                        .filter(plan -> !plan.tracks().isEmpty())
                        .isPresent();
    }

    /** Whether they are those of the short page. */
    boolean isBrief() {
        return variants.contains(BRIEF);
    }

    /** Whether nobody has named a finish, so that the present face stays. */
    static boolean isFinishOpen(Recommendation recommendation) {
        return recommendation.values(Topics.ACCEPTANCES, Subject.FLOOR).contains(Acceptance.FINISH_IS_ASSUMED);
    }

    /** The status, which states the verdict. */
    static Wording verdict(Recommendation recommendation) {
        List<StatedValue> verdict = recommendation.values(Topics.VERDICT, Subject.FLOOR).stream()
                .map(value -> StatedValue.ofFloor(Topics.VERDICT, value.key()))
                .toList();
        return new Wording.Stating(verdict, Wording.of(recommendation.status()));
    }

    /** A section that lists what was decided, unless that is nothing. */
    void list(Draft draft, String heading, Topic<?> topic, Collection<? extends Term> terms) {
        if (!terms.isEmpty()) {
            draft.section(phrase(heading)).bullets(terms, term -> ofFloor(topic, term));
        }
    }

    /** What is decided for the floor. */
    Wording ofFloor(Topic<?> topic, Term term) {
        return stating(StatedValue.ofFloor(topic, term.key()), of(term));
    }

    Wording of(Term term) {
        Wording.Phrase words = phrase(Wording.key(term));
        return term == Handling.SLOW_WALK ? words.with("speeds", speeds) : words;
    }

    /** The phrase for a key, as it is said on a job of this size and at this length. */
    Wording.Phrase phrase(String key) {
        return Wording.phrase(variants.stream()
                .map(key::concat)
                .filter(Language.english()::has)
                .findFirst()
                .orElse(key));
    }

    /** The short word of a term, for a table: the phrase {@code .short}, else its name. */
    static Wording.Phrase shortly(Term term) {
        String key = Wording.key(term) + ".short";
        return Wording.phrase(Language.english().has(key) ? key : ValueWords.nameKey(term));
    }

    static Wording stating(StatedValue value, Wording words) {
        return new Wording.Stating(List.of(value), words);
    }

    static Subject subject(TrackKind track, PlannedStep step) {
        return new Subject.OfStep(track, step.grade().key());
    }
}
