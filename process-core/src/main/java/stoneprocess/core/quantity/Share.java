package stoneprocess.core.quantity;

/**
 * A part of a whole in percent; whether more than 100 makes sense is checked where it is used.
 *
 * @param percent the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#SHARE}
 */
public record Share(double percent) implements Quantity {
    public Share {
        percent = Quantity.keep(Dimension.SHARE, percent);
    }

    /** The value in any unit of {@link Dimension#SHARE}; a unit of another dimension is refused. */
    public static Share of(double value, Unit unit) {
        return new Share(Quantity.convert(Dimension.SHARE, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.SHARE;
    }

    @Override
    public double kept() {
        return percent;
    }
}
