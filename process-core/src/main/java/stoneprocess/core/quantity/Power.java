package stoneprocess.core.quantity;

/**
 * Electric power that a circuit carries continuously.
 *
 * @param kilowatts the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#POWER}
 */
public record Power(double kilowatts) implements Quantity {
    public Power {
        kilowatts = Quantity.keep(Dimension.POWER, kilowatts);
    }

    /** The value in any unit of {@link Dimension#POWER}; a unit of another dimension is refused. */
    public static Power of(double value, Unit unit) {
        return new Power(Quantity.convert(Dimension.POWER, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public double kept() {
        return kilowatts;
    }
}
