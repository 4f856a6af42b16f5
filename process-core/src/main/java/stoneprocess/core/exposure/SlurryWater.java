package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Acidity;

/**
 * Slurry water by its pH.
 *
 * @param measured pH of the water
 * @param slurryClass where it may go by that
 * @param limit the limit that decides the class: the one that is overstepped, or the nearer one that is kept
 */
public record SlurryWater(Acidity measured, SlurryClass slurryClass, Limit<Acidity> limit) {
    public SlurryWater {
        Refuse.nulls(SlurryWater.class, measured, slurryClass, limit);
    }
}
