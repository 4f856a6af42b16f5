package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Share;

/**
 * A lift compared with its recommended weight limit.
 *
 * @param recommended recommended weight limit; zero when a distance, angle or frequency is beyond the equation
 * @param index load as a share of that limit, the lifting index; empty when the limit is zero
 * @param multipliers the multipliers that make the limit
 * @param verdict how the load compares with the limit
 * @param limit the load constant: the heaviest load that the best possible lift allows
 */
public record LiftingLimit(
        Mass recommended, Optional<Share> index, LiftMultipliers multipliers, LiftVerdict verdict, Limit<Mass> limit) {
    public LiftingLimit {
        Refuse.nulls(LiftingLimit.class, recommended, index, multipliers, verdict, limit);
    }
}
