package stoneprocess.core.quantity;

/**
 * The load that a floor is confirmed to carry.
 *
 * @param kilonewtonsPerSquareMetre the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#AREA_LOAD}
 */
public record AreaLoad(double kilonewtonsPerSquareMetre) implements Quantity {
    public AreaLoad {
        kilonewtonsPerSquareMetre = Quantity.keep(Dimension.AREA_LOAD, kilonewtonsPerSquareMetre);
    }

    /** The value in any unit of {@link Dimension#AREA_LOAD}; a unit of another dimension is refused. */
    public static AreaLoad of(double value, Unit unit) {
        return new AreaLoad(Quantity.convert(Dimension.AREA_LOAD, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA_LOAD;
    }

    @Override
    public double kept() {
        return kilonewtonsPerSquareMetre;
    }
}
