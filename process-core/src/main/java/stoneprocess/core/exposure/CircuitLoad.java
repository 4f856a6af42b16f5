package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;

/**
 * A circuit and its load.
 *
 * @param continuous power that the circuit carries for hours
 * @param load power of everything that runs at once
 * @param spare power that may be added; zero when none is left
 * @param verdict whether the circuit carries the load
 * @param limit share of the breaker's rating that may be drawn for hours
 */
public record CircuitLoad(Power continuous, Power load, Power spare, CircuitVerdict verdict, Limit<Share> limit) {
    public CircuitLoad {
        Refuse.nulls(CircuitLoad.class, continuous, load, spare, verdict, limit);
    }
}
