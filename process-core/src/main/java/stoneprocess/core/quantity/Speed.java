package stoneprocess.core.quantity;

/**
 * A speed, as of wind.
 *
 * @param metresPerSecond the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#SPEED}
 */
public record Speed(double metresPerSecond) implements Quantity {
    public Speed {
        metresPerSecond = Quantity.keep(Dimension.SPEED, metresPerSecond);
    }

    /** The value in any unit of {@link Dimension#SPEED}; a unit of another dimension is refused. */
    public static Speed of(double value, Unit unit) {
        return new Speed(Quantity.convert(Dimension.SPEED, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }

    @Override
    public double kept() {
        return metresPerSecond;
    }
}
