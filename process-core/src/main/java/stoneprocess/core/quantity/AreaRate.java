package stoneprocess.core.quantity;

/**
 * Area done in a time.
 *
 * @param squareMetresPerHour the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#AREA_RATE}
 */
public record AreaRate(double squareMetresPerHour) implements Quantity {
    public AreaRate {
        squareMetresPerHour = Quantity.keep(Dimension.AREA_RATE, squareMetresPerHour);
    }

    /** The value in any unit of {@link Dimension#AREA_RATE}; a unit of another dimension is refused. */
    public static AreaRate of(double value, Unit unit) {
        return new AreaRate(Quantity.convert(Dimension.AREA_RATE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA_RATE;
    }

    @Override
    public double kept() {
        return squareMetresPerHour;
    }
}
