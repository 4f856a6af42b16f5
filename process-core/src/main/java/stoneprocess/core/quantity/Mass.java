package stoneprocess.core.quantity;

/**
 * A mass, as of a machine or of added weight.
 *
 * @param kilograms the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#MASS}
 */
public record Mass(double kilograms) implements Quantity {
    public Mass {
        kilograms = Quantity.keep(Dimension.MASS, kilograms);
    }

    /** The value in any unit of {@link Dimension#MASS}; a unit of another dimension is refused. */
    public static Mass of(double value, Unit unit) {
        return new Mass(Quantity.convert(Dimension.MASS, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }

    @Override
    public double kept() {
        return kilograms;
    }
}
