package stoneprocess.core.gloss;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;

/**
 * Whether and how a target at 60 degrees can be reached.
 *
 * @param verdict how
 * @param target the gloss to reach
 * @param reachedBy the first way that likely reaches it: fewest passes of the grit in work, else the first grit of the
 *     plan; empty when none does
 * @param best the most probable way; empty when no grit is in work and none is planned
 * @param oldDamage probability that damage older than this start keeps the floor under the target whatever grit follows
 * @param startedTooFine whether that is likely: go back to a coarser start
 * @param basis what it rests on
 */
public record TargetOutlook(
        TargetVerdict verdict,
        Gloss target,
        Optional<TargetOption> reachedBy,
        Optional<TargetOption> best,
        Share oldDamage,
        boolean startedTooFine,
        ForecastBasis basis) {
    public TargetOutlook {
        Refuse.nulls(TargetOutlook.class, verdict, target, reachedBy, best, oldDamage, basis);
    }
}
