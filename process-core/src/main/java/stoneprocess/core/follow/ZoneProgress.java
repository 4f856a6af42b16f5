package stoneprocess.core.follow;

import java.util.Optional;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.internal.check.Refuse;

/**
 * What the readings of one zone tell at the hold point, at 60 degrees on a clean, dry surface.
 *
 * @param zone name of the zone
 * @param now the readings at the hold point
 * @param gain against the readings of the zone before; empty when there were none
 * @param angle the angle that tells most
 * @param outlook whether and how the finish is reached; empty where no forecast is made (soft stone, unknown stone, no
 *     resin grit)
 * @param morePasses the zone after the usual number of further passes of the grit; empty as the outlook
 */
public record ZoneProgress(
        String zone,
        ZoneStatistics now,
        Optional<Gain> gain,
        Geometry angle,
        Optional<TargetOutlook> outlook,
        Optional<GlossPrediction> morePasses) {
    public ZoneProgress {
        Refuse.nulls(ZoneProgress.class, zone, now, gain, angle, outlook, morePasses);
    }
}
