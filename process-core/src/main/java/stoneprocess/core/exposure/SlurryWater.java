package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Acidity;

/**
 * Slurry water, classified by its pH.
 *
 * @param measured pH of the water
 * @param slurryClass where the water may go by its pH
 * @param limit the limit that decides the class: the one exceeded or, where none is, the nearer one
 */
public record SlurryWater(Acidity measured, SlurryClass slurryClass, Limit<Acidity> limit) {
    public SlurryWater {
        Refuse.nulls(SlurryWater.class, measured, slurryClass, limit);
    }
}
