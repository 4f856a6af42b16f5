package stoneprocess.core.site;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.internal.check.Refuse;

/**
 * What the survey read in one zone.
 *
 * @param zone name of the zone
 * @param angles the angles that it was read at; none when it was not read clean and dry
 * @param best the angle that tells most, by its mean at 60 degrees; empty when it was not read at 60 degrees
 */
public record ZoneGloss(String zone, List<AngleGloss> angles, Optional<Geometry> best) {
    public ZoneGloss {
        Refuse.nulls(ZoneGloss.class, zone, angles, best);
        angles = List.copyOf(angles);
    }

    /** Whether it was read at an angle. */
    public boolean isReadAt(Geometry geometry) {
        return angles.stream().anyMatch(angle -> angle.geometry() == geometry);
    }
}
