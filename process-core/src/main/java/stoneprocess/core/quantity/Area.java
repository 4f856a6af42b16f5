package stoneprocess.core.quantity;

/**
 * A floor area.
 *
 * @param squareMetres the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#AREA}
 */
public record Area(double squareMetres) implements Quantity {
    public Area {
        squareMetres = Quantity.keep(Dimension.AREA, squareMetres);
    }

    /** The value in any unit of {@link Dimension#AREA}; a unit of another dimension is refused. */
    public static Area of(double value, Unit unit) {
        return new Area(Quantity.convert(Dimension.AREA, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }

    @Override
    public double kept() {
        return squareMetres;
    }
}
