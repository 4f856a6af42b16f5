package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/**
 * A part of the day at one level.
 *
 * @param level A-weighted level at the ear, slow, from 0 to 140 dBA
 * @param time duration, up to 24 h
 */
public record NoisePeriod(SoundLevel level, TimeSpan time) {
    static final SoundLevel LOUDEST = new SoundLevel(140);
    static final TimeSpan WHOLE_DAY = TimeSpan.of(24, Unit.HOUR);

    /**
     * Checks the ranges.
     *
     * @throws InvalidInputException for a level above 140 dBA or a time above 24 h
     */
    public NoisePeriod {
        Refuse.nulls(NoisePeriod.class, level, time);
        requireLevel(level);
        if (time.compareTo(WHOLE_DAY) > 0) {
            throw new InvalidInputException("noise.time", time.print(), "0 to 24 h");
        }
    }

    static void requireLevel(SoundLevel level) {
        if (level.compareTo(LOUDEST) > 0) {
            throw new InvalidInputException("noise.level", level.print(), "0 to " + LOUDEST.print());
        }
    }
}
