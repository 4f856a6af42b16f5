package stoneprocess.core.gloss;

import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * What a floor may read at another angle. With g the gloss over the ceiling, g' = g^k. A face that is finely rough all
 * over has k = (cos t' / cos t)^2, from the attenuation of {@link OpticalRoughness}: 3.53 from 60 to 20 degrees, 1/32.9
 * from 60 to 85. A face that is smooth but for matt spots and pits loses the same share at every angle: k = 1. Floors
 * lie between; how far is not published, so the expected value takes the geometric mean of both exponents and the
 * interval spans both.
 *
 * @param expected the middle of both limits
 * @param interval where the reading may lie, between both limits, the meter's reproducibility and the diffuse light of
 *     a pale stone included; never over the ceiling
 * @param fineRoughness the limit of a face that is finely rough all over
 * @param mattSpots the limit of a face that is smooth but for matt spots
 */
public record GlossConversion(Gloss expected, Range<Gloss> interval, Gloss fineRoughness, Gloss mattSpots) {
    /**
     * Converts a reading.
     *
     * @param gloss mean of clean, dry readings, from 0 to the ceiling at {@code from}; more is refused
     * @param from angle at which it was read
     * @param to angle to convert to
     * @param ceiling what the stone would read if it were smooth
     * @param paleness share of the light that the stone gives back, 0 to 100 %
     * @param parameters {@code gloss-meter.reproducibility} and the receptor, see {@link DiffuseLight}
     */
    public static GlossConversion of(
            Gloss gloss, Geometry from, Geometry to, GlossCeiling ceiling, Share paleness, Parameters parameters) {
        Gloss most = ceiling.at(from);
        if (gloss.compareTo(most) > 0) {
            throw new InvalidInputException("gloss", gloss.print(), "up to the stone's ceiling of " + most.print());
        }
        double exponent = exponent(from, to);
        double target = ceiling.at(to).gloss();
        double share = gloss.gloss() / most.gloss();
        double meter =
                parameters.get("gloss-meter.reproducibility", Gloss.class).gloss();
        double scattered = DiffuseLight.most(paleness, from, parameters).gloss();
        double least = Math.max(0, gloss.gloss() - meter - scattered) / most.gloss();
        double highest = Math.min(1, (gloss.gloss() + meter) / most.gloss());
        double low = target * StrictMath.pow(least, Math.max(1, exponent)) - meter;
        double high = target * StrictMath.pow(highest, Math.min(1, exponent))
                + meter
                + DiffuseLight.most(paleness, to, parameters).gloss();
        return new GlossConversion(
                new Gloss(target * StrictMath.pow(share, StrictMath.sqrt(exponent))),
                Range.of(new Gloss(Math.max(0, low)), new Gloss(Math.min(target, high))),
                new Gloss(target * StrictMath.pow(share, exponent)),
                new Gloss(target * share));
    }

    private static double exponent(Geometry from, Geometry to) {
        double ratio = OpticalRoughness.cos(to) / OpticalRoughness.cos(from);
        return ratio * ratio;
    }
}
