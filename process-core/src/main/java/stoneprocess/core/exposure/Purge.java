package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Airing a room that everybody has left and in which the engine is off.
 *
 * @param time time until the fully mixed room is down to the limit; empty when it never gets there
 * @param limit the limit to be reached
 */
public record Purge(Optional<TimeSpan> time, Limit<Concentration> limit) implements EngineFigure {
    public Purge {
        Refuse.nulls(Purge.class, time, limit);
    }
}
