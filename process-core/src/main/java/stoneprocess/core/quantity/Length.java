package stoneprocess.core.quantity;

/**
 * A length, depth, height or thickness.
 *
 * @param millimetres the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#LENGTH}
 */
public record Length(double millimetres) implements Quantity {
    public Length {
        millimetres = Quantity.keep(Dimension.LENGTH, millimetres);
    }

    /** The value in any unit of {@link Dimension#LENGTH}; a unit of another dimension is refused. */
    public static Length of(double value, Unit unit) {
        return new Length(Quantity.convert(Dimension.LENGTH, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public double kept() {
        return millimetres;
    }
}
