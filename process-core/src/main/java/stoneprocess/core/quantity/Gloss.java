package stoneprocess.core.quantity;

/**
 * Specular gloss in gloss units (GU) of ISO 2813: 100 is black glass of index 1.567 at the same geometry.
 *
 * @param gloss the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#GLOSS}
 */
public record Gloss(double gloss) implements Quantity {
    public Gloss {
        gloss = Quantity.keep(Dimension.GLOSS, gloss);
    }

    /** The value in any unit of {@link Dimension#GLOSS}; a unit of another dimension is refused. */
    public static Gloss of(double value, Unit unit) {
        return new Gloss(Quantity.convert(Dimension.GLOSS, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.GLOSS;
    }

    @Override
    public double kept() {
        return gloss;
    }
}
