package stoneprocess.core.gloss;

import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.term.Term;

/** A layer that fills the roughness of a floor and reads as gloss of its own. */
public enum Film implements Term {
    /** Water, refractive index 1.333. */
    WATER(1.333),

    /** Resin, acrylic or wax, refractive index about 1.5. */
    COATING(1.5);

    private final double index;

    Film(double index) {
        this.index = index;
    }

    /**
     * The most that a floor under this film can read: the gloss of a smooth layer of its index, in GU, by
     * {@link Fresnel}. Water reads at most 59.7 and a coating 89 GU at 60 degrees.
     *
     * @param geometry angle of the meter
     */
    public Gloss cap(Geometry geometry) {
        return Fresnel.gloss(index, geometry);
    }
}
