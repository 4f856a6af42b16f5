package stoneprocess.core.quantity;

/**
 * A volume of liquid or of a room.
 *
 * @param litres the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#VOLUME}
 */
public record Volume(double litres) implements Quantity {
    public Volume {
        litres = Quantity.keep(Dimension.VOLUME, litres);
    }

    /** The value in any unit of {@link Dimension#VOLUME}; a unit of another dimension is refused. */
    public static Volume of(double value, Unit unit) {
        return new Volume(Quantity.convert(Dimension.VOLUME, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }

    @Override
    public double kept() {
        return litres;
    }
}
