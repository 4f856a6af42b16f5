package stoneprocess.core.quantity;

/**
 * Liquid spread over a surface, per pass unless said otherwise.
 *
 * @param litresPerSquareMetre the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#COVERAGE}
 */
public record Coverage(double litresPerSquareMetre) implements Quantity {
    public Coverage {
        litresPerSquareMetre = Quantity.keep(Dimension.COVERAGE, litresPerSquareMetre);
    }

    /** The value in any unit of {@link Dimension#COVERAGE}; a unit of another dimension is refused. */
    public static Coverage of(double value, Unit unit) {
        return new Coverage(Quantity.convert(Dimension.COVERAGE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.COVERAGE;
    }

    @Override
    public double kept() {
        return litresPerSquareMetre;
    }
}
