package stoneprocess.core.gloss;

import java.util.Comparator;
import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Work done with one resin grit.
 *
 * @param grit resin grit number, see {@link GritPrior#of}
 * @param passes wet passes done, 0 to 1000
 * @param readings what was read on the way, none after more passes than were done; kept in the order of passes
 */
public record GritStage(int grit, int passes, List<LevelReading> readings) {
    private static final int MOST_PASSES = 1000;

    public GritStage {
        Refuse.nulls(GritStage.class, readings);
        passes(passes);
        readings = readings.stream()
                .sorted(Comparator.comparingInt(LevelReading::passes))
                .toList();
        for (LevelReading reading : readings) {
            if (reading.passes() > passes) {
                throw new InvalidInputException(
                        "reading.passes",
                        Integer.toString(reading.passes()),
                        "up to the " + passes + " passes done with grit " + grit);
            }
        }
    }

    /** A stage that was read once, after its last pass. */
    public static GritStage readAtEnd(int grit, int passes, ReadingSet set) {
        return new GritStage(grit, passes, List.of(LevelReading.of(passes, set)));
    }

    static void passes(int passes) {
        if (passes < 0 || passes > MOST_PASSES) {
            throw new InvalidInputException("passes", Integer.toString(passes), "0 to " + MOST_PASSES + " passes");
        }
    }
}
