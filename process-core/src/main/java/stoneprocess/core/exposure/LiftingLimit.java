package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Share;

/**
 * A lift against its recommended weight limit.
 *
 * @param recommended recommended weight limit; zero when a distance, angle or frequency is beyond the equation
 * @param index load as a share of that limit, the lifting index; empty when the limit is zero
 * @param multipliers what the limit was made of
 * @param verdict where that stands
 * @param limit the load constant: what the best possible lift may weigh
 */
public record LiftingLimit(
        Mass recommended, Optional<Share> index, LiftMultipliers multipliers, LiftVerdict verdict, Limit<Mass> limit) {
    public LiftingLimit {
        Refuse.nulls(LiftingLimit.class, recommended, index, multipliers, verdict, limit);
    }
}
