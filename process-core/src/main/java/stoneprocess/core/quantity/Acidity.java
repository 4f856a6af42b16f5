package stoneprocess.core.quantity;

/**
 * The acidity of a liquid as its pH: 7 is neutral, less is acid, more is alkaline.
 *
 * @param ph the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#ACIDITY}
 */
public record Acidity(double ph) implements Quantity {
    public Acidity {
        ph = Quantity.keep(Dimension.ACIDITY, ph);
    }

    /** The value in any unit of {@link Dimension#ACIDITY}; a unit of another dimension is refused. */
    public static Acidity of(double value, Unit unit) {
        return new Acidity(Quantity.convert(Dimension.ACIDITY, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.ACIDITY;
    }

    @Override
    public double kept() {
        return ph;
    }
}
