package stoneprocess.core.quantity;

/**
 * A reading of the pendulum slip test, the pendulum test value (PTV).
 *
 * @param pendulumValue the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#PENDULUM_VALUE}
 */
public record PendulumValue(double pendulumValue) implements Quantity {
    public PendulumValue {
        pendulumValue = Quantity.keep(Dimension.PENDULUM_VALUE, pendulumValue);
    }

    /** The value in any unit of {@link Dimension#PENDULUM_VALUE}; a unit of another dimension is refused. */
    public static PendulumValue of(double value, Unit unit) {
        return new PendulumValue(Quantity.convert(Dimension.PENDULUM_VALUE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.PENDULUM_VALUE;
    }

    @Override
    public double kept() {
        return pendulumValue;
    }
}
