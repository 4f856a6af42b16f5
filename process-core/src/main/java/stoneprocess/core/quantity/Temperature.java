package stoneprocess.core.quantity;

/**
 * A temperature of air or of a surface, not a difference of two.
 *
 * @param celsius the value in the kept unit, from absolute zero up, rounded to the declared step of {@link
 *     Dimension#TEMPERATURE}
 */
public record Temperature(double celsius) implements Quantity {
    public Temperature {
        celsius = Quantity.keep(Dimension.TEMPERATURE, celsius);
    }

    /** The value in any unit of {@link Dimension#TEMPERATURE}; a unit of another dimension is refused. */
    public static Temperature of(double value, Unit unit) {
        return new Temperature(Quantity.convert(Dimension.TEMPERATURE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }

    @Override
    public double kept() {
        return celsius;
    }
}
