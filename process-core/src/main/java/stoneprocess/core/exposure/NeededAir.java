package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Fresh air that would keep an engine's carbon monoxide at a limit if the room were fully mixed.
 *
 * @param air the fresh air; empty when the air that comes in is itself at the limit or above it
 * @param oneChange time for one air change: half a minute is 120 air changes an hour
 * @param limit the limit that it keeps
 */
public record NeededAir(Optional<Airflow> air, Optional<TimeSpan> oneChange, Limit<Concentration> limit)
        implements EngineFigure {
    public NeededAir {
        Refuse.nulls(NeededAir.class, air, oneChange, limit);
    }
}
