package stoneprocess.core.survey;

import stoneprocess.core.gloss.Fresnel;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;

/**
 * One reading of a gloss meter before the work.
 *
 * @param zone name of the zone
 * @param geometry angle of the meter
 * @param gloss what it showed, from 0 to the reading of a perfect mirror at that angle
 * @param state the state of the surface when it was read; only a clean, dry surface tells something
 */
public record GlossReading(String zone, Geometry geometry, Gloss gloss, SurfaceState state) {
    public GlossReading {
        Refuse.nulls(GlossReading.class, zone, geometry, gloss, state);
        Fresnel.requireReading(gloss, geometry);
    }
}
