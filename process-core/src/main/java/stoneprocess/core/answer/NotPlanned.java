package stoneprocess.core.answer;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Upkeep;

/**
 * What the survey tells that calls for work and that the plan does not treat.
 *
 * @param what a kind of damage, or the answer: open joints, a film, pieces that rock or sound hollow
 * @param why what keeps it from being treated
 */
public record NotPlanned(Term what, Why why) {
    /** What keeps it from being treated. */
    public enum Why implements Term {
        /** Nobody said how much of the floor has it. */
        SHARE_MISSING,

        /** The work waits, and no cut is planned yet. */
        NO_CUT_YET,

        /** Nobody said of which kind it is. */
        KIND_MISSING,

        /** The plan leaves it as it is. */
        STAYS
    }

    private static final Set<Task> STRIPPING =
            EnumSet.of(Task.STRIP_COATING, Task.STRIP_NEARLY_DRY, Task.REMOVE_FILM, Task.TRY_ON_RESIN);

    /** What treats an answer other than a damage. */
    private static final Map<Term, Set<Task>> BY_TASKS = Map.of(
            Joints.OPEN, EnumSet.of(Task.REGROUT, Task.SEMI_RIGID_JOINTS, Task.ELASTIC_JOINTS),
            Coating.WAX, STRIPPING,
            Coating.ACRYLIC, STRIPPING,
            Coating.URETHANE, STRIPPING,
            Coating.EPOXY, STRIPPING,
            Sounding.FEW_HOLLOW, EnumSet.of(Task.FIX_HOLLOW),
            Sounding.FEW_LOOSE, EnumSet.of(Task.FIX_HOLLOW),
            Sounding.HOLLOW, EnumSet.of(Task.FIX_HOLLOW),
            Sounding.LOOSE, EnumSet.of(Task.FIX_HOLLOW));

    private static final Set<Hazard> SUSPECT = EnumSet.of(Hazard.FIBROUS_STONE, Hazard.HAZARDOUS_LAYER);

    private static final Map<DamageKind, Task> BY_TASK = Map.of(
            DamageKind.CRACKS, Task.FILL_CRACKS,
            DamageKind.OIL_STAINS, Task.POULTICE_OIL,
            DamageKind.ORGANIC_STAINS, Task.POULTICE_ORGANIC,
            DamageKind.RUST_STAINS, Task.POULTICE_RUST,
            DamageKind.SALTS, Task.DRY_CLEAN_SALTS,
            DamageKind.FLAKING, Task.FIND_MOISTURE);

    public NotPlanned {
        Refuse.nulls(NotPlanned.class, what, why);
    }

    /**
     * All that was told and is not treated: damages, then joints, pieces and coating; slight lippage needs no treatment, and
     * what a refusal asks for first is not told as waiting.
     */
    public static List<NotPlanned> of(Recommendation recommendation) {
        Refuse.nulls(NotPlanned.class, recommendation);
        Optional<Plan> plan = recommendation.plan();
        List<NotPlanned> left = new ArrayList<>();
        for (DamageKind kind : DamageKind.values()) {
            boolean shareMissing =
                    plan.isPresent() && recommendation.withoutShare().contains(kind);
            boolean treated = plan.filter(made -> isTreated(kind, made)).isPresent();
            if (!recommendation.told(kind).isEmpty() && (shareMissing || !treated)) {
                left.add(new NotPlanned(kind, shareMissing ? Why.SHARE_MISSING : why(kind, recommendation)));
            }
        }
        FloorSurvey survey = recommendation.survey();
        Stream.of(SurveyField.JOINTS, SurveyField.SOUNDING, SurveyField.COATING)
                .flatMap(field -> survey.answer(field).value().stream())
                .map(Term.class::cast)
                .filter(BY_TASKS::containsKey)
                .filter(told -> plan.filter(made -> isTreated(told, made)).isEmpty())
                .filter(told -> !isFirstStep(told, recommendation))
                .map(told ->
                        new NotPlanned(told, recommendation.status() == Status.PLANNED ? Why.STAYS : Why.NO_CUT_YET))
                .forEach(left::add);
        boolean coated = survey.answer(SurveyField.LAST_TREATMENT).value().equals(Optional.of(LastTreatment.COATING));
        if (coated && !survey.answer(SurveyField.COATING).isKnown()) {
            left.add(new NotPlanned(LastTreatment.COATING, Why.KIND_MISSING));
        }
        return List.copyOf(left);
    }

    /** Without a plan, pieces that are made firm first, where nothing suspect may lie in or under them. */
    private static boolean isFirstStep(Term told, Recommendation recommendation) {
        return told instanceof Sounding
                && recommendation.plan().isEmpty()
                && recommendation.warnings().stream().map(SafetyWarning::hazard).noneMatch(SUSPECT::contains)
                && recommendation.values(Topics.PREPARATION, Subject.FLOOR).contains(Task.FIX_HOLLOW);
    }

    /** A film that is kept as a coating is cared for. */
    private static boolean isTreated(Term told, Plan plan) {
        return plan.tasks().stream().anyMatch(BY_TASKS.get(told)::contains)
                || told instanceof Coating && plan.upkeep().contains(Upkeep.KEEP_COATING);
    }

    private static Why why(DamageKind kind, Recommendation recommendation) {
        boolean waits = recommendation.plan().isEmpty()
                || recommendation.status() == Status.PROVISIONAL
                        && recommendation.plan().orElseThrow().tracks().isEmpty()
                        && Recommendation.CUT_BY_SHARE.contains(kind);
        return waits ? Why.NO_CUT_YET : Why.STAYS;
    }

    private static boolean isTreated(DamageKind kind, Plan plan) {
        boolean groundFlat = plan.tracks().stream()
                .anyMatch(track -> track.steps().get(0).grade().bond() == Bond.METAL);
        return switch (kind) {
            case SCRATCHES, ETCHES, WEAR -> !plan.tracks().isEmpty();
            case LIPPAGE ->
                groundFlat
                        || plan.tasks().contains(Task.RELAY_LIPPED)
                        || plan.repairs().contains(Repair.LOCAL_LIPPAGE);
            case WAVINESS -> groundFlat;
            default -> plan.tasks().contains(BY_TASK.get(kind));
        };
    }
}
