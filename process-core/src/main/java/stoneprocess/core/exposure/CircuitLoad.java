package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;

/**
 * A circuit with what hangs on it.
 *
 * @param continuous power that it carries for hours
 * @param load power of everything that runs at once
 * @param spare what may be added, zero when there is nothing left
 * @param verdict whether it carries the load
 * @param limit share of the breaker's rating that may be drawn for hours
 */
public record CircuitLoad(Power continuous, Power load, Power spare, CircuitVerdict verdict, Limit<Share> limit) {
    public CircuitLoad {
        Refuse.nulls(CircuitLoad.class, continuous, load, spare, verdict, limit);
    }
}
