package stoneprocess.core.exposure;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.TimeSpan;

/**
 * What an engine makes of a room's air, fully mixed.
 *
 * @param atEnd carbon monoxide when the engine stops, where it is highest
 * @param shiftMean mean over 8 h, the rest of which is spent in background air
 * @param timeToCeiling running time until the ceiling; empty when the mixed room settles below it
 * @param verdict what that says; never that the engine is cleared
 * @param limits the limits held against it: ceiling, mean of NIOSH, mean of OSHA
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
