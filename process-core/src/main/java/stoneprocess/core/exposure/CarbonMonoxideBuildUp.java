package stoneprocess.core.exposure;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Carbon monoxide in the fully mixed air of a room in which an engine runs.
 *
 * @param atEnd carbon monoxide when the engine stops, where it is highest
 * @param shiftMean mean over 8 h; after the engine stops, the rest of the shift counts as spent in background air
 * @param timeToCeiling running time until the ceiling is reached; empty when the room settles below it
 * @param verdict how that compares with the limits; never that the engine is cleared
 * @param limits the limits that it is compared with: ceiling, mean of NIOSH, mean of OSHA
 */
public record CarbonMonoxideBuildUp(
        Concentration atEnd,
        Concentration shiftMean,
        Optional<TimeSpan> timeToCeiling,
        EngineVerdict verdict,
        List<Limit<Concentration>> limits)
        implements EngineFigure {
    /** Copies the limits. */
    public CarbonMonoxideBuildUp {
        Refuse.nulls(CarbonMonoxideBuildUp.class, atEnd, shiftMean, timeToCeiling, verdict, limits);
        limits = List.copyOf(limits);
    }
}
