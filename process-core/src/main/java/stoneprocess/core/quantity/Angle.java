package stoneprocess.core.quantity;

/**
 * A plane angle, as of a slope.
 *
 * @param degrees the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#ANGLE}
 */
public record Angle(double degrees) implements Quantity {
    public Angle {
        degrees = Quantity.keep(Dimension.ANGLE, degrees);
    }

    /** The value in any unit of {@link Dimension#ANGLE}; a unit of another dimension is refused. */
    public static Angle of(double value, Unit unit) {
        return new Angle(Quantity.convert(Dimension.ANGLE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    @Override
    public double kept() {
        return degrees;
    }
}
