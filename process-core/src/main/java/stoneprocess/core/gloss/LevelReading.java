package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * What one zone read at 60 degrees after some passes of a grit.
 *
 * @param passes passes of that grit done so far, 0 to 1000
 * @param mean mean of clean, dry readings at 60 degrees
 * @param readings how many readings the mean is made of, 1 or more
 */
public record LevelReading(int passes, Gloss mean, int readings) {
    public LevelReading {
        Refuse.nulls(LevelReading.class, mean);
        GritStage.passes(passes);
        if (readings < 1) {
            throw new InvalidInputException("readings", Integer.toString(readings), "at least one reading");
        }
    }

    /**
     * The mean of a set.
     *
     * @param passes passes of the grit done so far, 0 to 1000
     * @param set at least one used reading at 60 degrees; another angle or no reading is refused
     */
    public static LevelReading of(int passes, ReadingSet set) {
        if (set.geometry() != Geometry.DEG_60) {
            throw new InvalidInputException(
                    "geometry", set.geometry().key(), "60, since final values are known for that angle only");
        }
        if (set.used().isEmpty()) {
            throw new InvalidInputException("readings", "none", "at least one clean, dry reading at 60 degrees");
        }
        return new LevelReading(
                passes, new Gloss(Sample.of(set.values()).mean()), set.used().size());
    }
}
