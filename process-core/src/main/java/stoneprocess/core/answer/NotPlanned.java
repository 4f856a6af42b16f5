package stoneprocess.core.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Task;

/**
 * A damage that the survey tells and the plan does not treat.
 *
 * @param kind the damage
 * @param why what keeps it from being treated
 */
public record NotPlanned(DamageKind kind, Why why) {
    /** What keeps a damage from being treated. */
    public enum Why implements Term {
        /** Nobody said how much of the floor has it. */
        SHARE_MISSING,

        /** The work waits, and no cut is planned yet. */
        NO_CUT_YET,

        /** The plan leaves it as it is. */
        STAYS
    }

    private static final Map<DamageKind, Task> BY_TASK = Map.of(
            DamageKind.CRACKS, Task.FILL_CRACKS,
            DamageKind.OIL_STAINS, Task.POULTICE_OIL,
            DamageKind.ORGANIC_STAINS, Task.POULTICE_ORGANIC,
            DamageKind.RUST_STAINS, Task.POULTICE_RUST,
            DamageKind.SALTS, Task.DRY_CLEAN_SALTS,
            DamageKind.FLAKING, Task.FIND_MOISTURE);

    public NotPlanned {
        Refuse.nulls(NotPlanned.class, kind, why);
    }

    /** All that was told and is not treated, in the order of the survey form; slight lippage needs no treatment. */
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
        return List.copyOf(left);
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
