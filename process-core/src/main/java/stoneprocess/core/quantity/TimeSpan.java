package stoneprocess.core.quantity;

/**
 * A span of working, waiting or curing time.
 *
 * @param minutes the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#TIME}
 */
public record TimeSpan(double minutes) implements Quantity {
    public TimeSpan {
        minutes = Quantity.keep(Dimension.TIME, minutes);
    }

    /** The value in any unit of {@link Dimension#TIME}; a unit of another dimension is refused. */
    public static TimeSpan of(double value, Unit unit) {
        return new TimeSpan(Quantity.convert(Dimension.TIME, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }

    @Override
    public double kept() {
        return minutes;
    }
}
