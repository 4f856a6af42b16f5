package stoneprocess.core.quantity;

/**
 * Gas in air by volume, as of carbon monoxide.
 *
 * @param partsPerMillion the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#CONCENTRATION}
 */
public record Concentration(double partsPerMillion) implements Quantity {
    public Concentration {
        partsPerMillion = Quantity.keep(Dimension.CONCENTRATION, partsPerMillion);
    }

    /** The value in any unit of {@link Dimension#CONCENTRATION}; a unit of another dimension is refused. */
    public static Concentration of(double value, Unit unit) {
        return new Concentration(Quantity.convert(Dimension.CONCENTRATION, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.CONCENTRATION;
    }

    @Override
    public double kept() {
        return partsPerMillion;
    }
}
