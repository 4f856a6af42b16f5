package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Fresh air that would hold an engine's carbon monoxide at a limit for good, were the room fully mixed.
 *
 * @param air the air; empty when the air that comes in is itself at the limit
 * @param oneChange the time in which that air fills the room once: half a minute is 120 air changes an hour
 * @param limit the limit that it holds
 */
public record NeededAir(Optional<Airflow> air, Optional<TimeSpan> oneChange, Limit<Concentration> limit)
        implements EngineFigure {
    public NeededAir {
        Refuse.nulls(NeededAir.class, air, oneChange, limit);
    }
}
