package stoneprocess.core.quantity;

/**
 * How fast something walks, turns or slides; also running metres done in a time.
 *
 * @param metresPerMinute the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#SPEED}
 */
public record Speed(double metresPerMinute) implements Quantity {
    public Speed {
        metresPerMinute = Quantity.keep(Dimension.SPEED, metresPerMinute);
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
        return metresPerMinute;
    }
}
