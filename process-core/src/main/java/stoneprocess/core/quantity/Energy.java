package stoneprocess.core.quantity;

/**
 * Electric energy.
 *
 * @param kilowattHours the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#ENERGY}
 */
public record Energy(double kilowattHours) implements Quantity {
    public Energy {
        kilowattHours = Quantity.keep(Dimension.ENERGY, kilowattHours);
    }

    /** The value in any unit of {@link Dimension#ENERGY}; a unit of another dimension is refused. */
    public static Energy of(double value, Unit unit) {
        return new Energy(Quantity.convert(Dimension.ENERGY, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.ENERGY;
    }

    @Override
    public double kept() {
        return kilowattHours;
    }
}
