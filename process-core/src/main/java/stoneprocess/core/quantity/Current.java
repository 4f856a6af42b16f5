package stoneprocess.core.quantity;

/**
 * The current that a circuit may carry.
 *
 * @param amperes the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#CURRENT}
 */
public record Current(double amperes) implements Quantity {
    public Current {
        amperes = Quantity.keep(Dimension.CURRENT, amperes);
    }

    /** The value in any unit of {@link Dimension#CURRENT}; a unit of another dimension is refused. */
    public static Current of(double value, Unit unit) {
        return new Current(Quantity.convert(Dimension.CURRENT, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.CURRENT;
    }

    @Override
    public double kept() {
        return amperes;
    }
}
