package stoneprocess.core.gloss;

import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * Reflection of unpolarised light at a smooth surface, and the gloss that follows from it.
 *
 * <p>With incidence t and s = sqrt(n^2 - sin^2 t): R = 1/2 [((cos t - s)/(cos t + s))^2 + ((n^2 cos t - s)/(n^2 cos t +
 * s))^2]. Gloss is 100 R(n, t) / R(1.567, t), the definition of ISO 2813. Real floors are rougher and read less.
 */
public final class Fresnel {
    /** Refractive index of the black glass that defines 100 GU, dimensionless (ISO 2813). */
    public static final double BLACK_GLASS_INDEX = 1.567;

    private Fresnel() {}

    /**
     * Share of light that a smooth surface reflects.
     *
     * @param index refractive index against air, from 1 to 4, dimensionless
     * @param geometry angle of incidence
     * @return reflectance from 0 to 1
     * @throws InvalidInputException when the index lies outside its range
     */
    public static double reflectance(double index, Geometry geometry) {
        if (!(index >= 1 && index <= 4)) {
            throw new InvalidInputException("index", Double.toString(index), "a refractive index from 1 to 4");
        }
        double t = StrictMath.toRadians(geometry.degrees());
        double cos = StrictMath.cos(t);
        double sin = StrictMath.sin(t);
        double s = StrictMath.sqrt(index * index - sin * sin);
        double across = (cos - s) / (cos + s);
        double along = (index * index * cos - s) / (index * index * cos + s);
        return (across * across + along * along) / 2;
    }

    /**
     * Gloss of a perfectly smooth surface.
     *
     * @param index refractive index against air, from 1 to 4, dimensionless
     * @param geometry angle of incidence
     * @throws InvalidInputException when the index lies outside its range
     */
    public static Gloss gloss(double index, Geometry geometry) {
        return new Gloss(100 * reflectance(index, geometry) / reflectance(BLACK_GLASS_INDEX, geometry));
    }

    /** Gloss of a perfect mirror, the upper end of the scale: 100 / R(1.567), about 2000, 1000 and 160 GU. */
    public static Gloss mirror(Geometry geometry) {
        return new Gloss(100 / reflectance(BLACK_GLASS_INDEX, geometry));
    }

    /**
     * Refuses a reading that no meter shows.
     *
     * @throws InvalidInputException naming the field {@code gloss}, for more than {@link #mirror} reads at that angle
     */
    public static void requireReading(Gloss gloss, Geometry geometry) {
        Gloss mirror = mirror(geometry);
        if (gloss.compareTo(mirror) > 0) {
            throw new InvalidInputException(
                    "gloss",
                    gloss.print(),
                    "a reading from 0 to " + (int) StrictMath.floor(mirror.gloss()) + " GU, that of a mirror at "
                            + geometry.degrees() + " degrees");
        }
    }
}
