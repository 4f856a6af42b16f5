package stoneprocess.core.quantity;

/**
 * An A-weighted sound level over 20 micropascals.
 *
 * @param decibels the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#SOUND_LEVEL}
 */
public record SoundLevel(double decibels) implements Quantity {
    public SoundLevel {
        decibels = Quantity.keep(Dimension.SOUND_LEVEL, decibels);
    }

    /** The value in any unit of {@link Dimension#SOUND_LEVEL}; a unit of another dimension is refused. */
    public static SoundLevel of(double value, Unit unit) {
        return new SoundLevel(Quantity.convert(Dimension.SOUND_LEVEL, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.SOUND_LEVEL;
    }

    @Override
    public double kept() {
        return decibels;
    }
}
