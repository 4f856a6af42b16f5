package stoneprocess.core.gloss;

import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;

/** Light that a pale stone scatters evenly, of which a little falls into the meter and reads as gloss. */
public final class DiffuseLight {
    private DiffuseLight() {}

    /**
     * The most that even scattering adds to a reading: 100 w cos t W / (pi R(1.567, t)) GU, where w is the paleness and
     * W the solid angle of the meter's receptor. White at most 1.2, 2.5 and 0.03 GU at 20, 60 and 85 degrees.
     *
     * @param paleness share of the light that the stone gives back, from 0 (black) to 100 % (white); more is refused
     * @param geometry angle of the meter
     * @param parameters {@code gloss-aperture.<angle>.plane} and {@code .across}: the receptor of ISO 2813
     */
    public static Gloss most(Share paleness, Geometry geometry, Parameters parameters) {
        if (paleness.percent() > 100) {
            throw new InvalidInputException("paleness", paleness.print(), "0 to 100 %");
        }
        double solidAngle = side(geometry, "plane", parameters) * side(geometry, "across", parameters);
        double into = OpticalRoughness.cos(geometry) * solidAngle / StrictMath.PI;
        double glass = Fresnel.reflectance(Fresnel.BLACK_GLASS_INDEX, geometry);
        return new Gloss(paleness.percent() * into / glass);
    }

    private static double side(Geometry geometry, String side, Parameters parameters) {
        return StrictMath.toRadians(parameters
                .get("gloss-aperture." + geometry.key() + "." + side, Angle.class)
                .degrees());
    }
}
