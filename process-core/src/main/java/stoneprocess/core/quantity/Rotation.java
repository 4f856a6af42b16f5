package stoneprocess.core.quantity;

/**
 * A speed of rotation.
 *
 * @param revolutionsPerMinute the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#ROTATION}
 */
public record Rotation(double revolutionsPerMinute) implements Quantity {
    public Rotation {
        revolutionsPerMinute = Quantity.keep(Dimension.ROTATION, revolutionsPerMinute);
    }

    /** The value in any unit of {@link Dimension#ROTATION}; a unit of another dimension is refused. */
    public static Rotation of(double value, Unit unit) {
        return new Rotation(Quantity.convert(Dimension.ROTATION, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.ROTATION;
    }

    @Override
    public double kept() {
        return revolutionsPerMinute;
    }
}
