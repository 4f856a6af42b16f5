package stoneprocess.core.quantity;

/**
 * A whole number of things, such as passes, or a grit number.
 *
 * @param number the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#COUNT}
 */
public record Count(double number) implements Quantity {
    public Count {
        number = Quantity.keep(Dimension.COUNT, number);
    }

    /** The value in any unit of {@link Dimension#COUNT}; a unit of another dimension is refused. */
    public static Count of(double value, Unit unit) {
        return new Count(Quantity.convert(Dimension.COUNT, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.COUNT;
    }

    @Override
    public double kept() {
        return number;
    }
}
