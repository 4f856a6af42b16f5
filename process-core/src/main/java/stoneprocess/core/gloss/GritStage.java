package stoneprocess.core.gloss;

import java.util.Comparator;
import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;

/**
 * Work done with one resin grit. A pass counts by what it takes off, since that clears the scratches of the grit before:
 * passes made over passes needed are the same part of the work under any machine.
 *
 * @param grit resin grit number, see {@link GritPrior#of}
 * @param passes wet passes done, 0 to 1000
 * @param intensity what a pass takes off beside one of the usual single disc, over 0 %, as
 *     {@link stoneprocess.core.removal.Removal#intensity} tells it
 * @param readings what was read on the way, none after more passes than were done; kept in the order of passes
 */
public record GritStage(int grit, int passes, Share intensity, List<LevelReading> readings) {
    static final Share SINGLE_DISC = new Share(100);

    private static final int MOST_PASSES = 1000;

    public GritStage {
        Refuse.nulls(GritStage.class, intensity, readings);
        passes(passes);
        requireIntensity(intensity);
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

    /** Passes of the usual single disc. */
    public GritStage(int grit, int passes, List<LevelReading> readings) {
        this(grit, passes, SINGLE_DISC, readings);
    }

    /** A stage that was read once, after its last pass. */
    public static GritStage readAtEnd(int grit, int passes, ReadingSet set) {
        return new GritStage(grit, passes, List.of(LevelReading.of(passes, set)));
    }

    /** Some passes of this stage in passes of the usual single disc. */
    double work(int some) {
        return some * intensity.percent() / 100;
    }

    static void requireIntensity(Share intensity) {
        if (intensity.percent() == 0) {
            throw new InvalidInputException("intensity", intensity.print(), "over 0 %");
        }
    }

    static void passes(int passes) {
        if (passes < 0 || passes > MOST_PASSES) {
            throw new InvalidInputException("passes", Integer.toString(passes), "0 to " + MOST_PASSES + " passes");
        }
    }
}
