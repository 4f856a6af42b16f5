package stoneprocess.core.gloss;

import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * Effective optical roughness of a surface: the height scatter that would take away as much gloss as it has lost. It
 * is inferred from gloss alone and has a type of its own so that no stylus Ra and no areal Sq is put in its place:
 * published surfaces of Sq near 750 nm still read 30 GU, where this formula gives zero (Operative Dentistry 38(3) E9).
 *
 * <p>Gloss is the ceiling times exp(-(4 pi sigma cos t / lambda)^2) at incidence t (Bennett and Porteus, J. Opt. Soc.
 * Am. 51 (1961) 123), derived for sigma much smaller than lambda. The wavelength scales sigma only; converting gloss to
 * gloss does not depend on it.
 *
 * @param nanometres sigma in nanometres, zero (perfectly smooth) or more, finite
 */
public record OpticalRoughness(double nanometres) {
    /** Wavelength at which the eye, and with it a gloss meter of ISO 2813, is most sensitive, in nanometres. */
    public static final double WAVELENGTH_NM = 555;

    /** Above this share of the wavelength, seen along the light, a surface no longer counts as smooth (Rayleigh). */
    private static final double SMOOTH = 1.0 / 8;

    public OpticalRoughness {
        if (!(nanometres >= 0 && Double.isFinite(nanometres))) {
            throw new InvalidInputException(
                    "roughness", Double.toString(nanometres), "a finite number of zero or more, in nm");
        }
    }

    /**
     * The roughness that explains a reading: lambda / (4 pi cos t) sqrt(ln(ceiling / gloss)).
     *
     * @param gloss mean of clean, dry readings, over 0 up to the ceiling; anything else is refused
     * @param ceiling what the stone would read if it were smooth
     * @param geometry angle of the meter
     */
    public static OpticalRoughness of(Gloss gloss, GlossCeiling ceiling, Geometry geometry) {
        double most = ceiling.at(geometry).gloss();
        if (!(gloss.gloss() > 0 && gloss.gloss() <= most)) {
            throw new InvalidInputException(
                    "gloss",
                    gloss.print(),
                    "over 0 and up to the stone's ceiling of "
                            + ceiling.at(geometry).print());
        }
        return new OpticalRoughness(StrictMath.sqrt(StrictMath.log(most / gloss.gloss())) / phase(geometry));
    }

    /**
     * What a surface of this roughness reads, in GU: from the ceiling at zero down to 0.
     *
     * @param ceiling what the stone would read if it were smooth
     * @param geometry angle of the meter
     */
    public Gloss gloss(GlossCeiling ceiling, Geometry geometry) {
        double phase = nanometres * phase(geometry);
        return new Gloss(ceiling.at(geometry).gloss() * StrictMath.exp(-phase * phase));
    }

    /**
     * Whether the formula can be trusted at that angle: sigma cos t is at most an eighth of the wavelength (Rayleigh's
     * criterion, from memory). Beyond it the figure is only good for comparing one floor with itself.
     */
    public boolean smoothAt(Geometry geometry) {
        return nanometres * cos(geometry) <= SMOOTH * WAVELENGTH_NM;
    }

    private static double phase(Geometry geometry) {
        return 4 * StrictMath.PI * cos(geometry) / WAVELENGTH_NM;
    }

    static double cos(Geometry geometry) {
        return StrictMath.cos(StrictMath.toRadians(geometry.degrees()));
    }
}
