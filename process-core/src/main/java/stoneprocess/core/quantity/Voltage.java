package stoneprocess.core.quantity;

/**
 * The voltage of a supply.
 *
 * @param volts the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#VOLTAGE}
 */
public record Voltage(double volts) implements Quantity {
    public Voltage {
        volts = Quantity.keep(Dimension.VOLTAGE, volts);
    }

    /** The value in any unit of {@link Dimension#VOLTAGE}; a unit of another dimension is refused. */
    public static Voltage of(double value, Unit unit) {
        return new Voltage(Quantity.convert(Dimension.VOLTAGE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLTAGE;
    }

    @Override
    public double kept() {
        return volts;
    }
}
