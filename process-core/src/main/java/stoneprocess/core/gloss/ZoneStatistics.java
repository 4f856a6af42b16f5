package stoneprocess.core.gloss;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * Readings of one zone in figures.
 *
 * @param count how many readings, 1 or more
 * @param mean their mean
 * @param deviation their standard deviation, with one less than the count as divisor; empty for a single reading
 * @param meanInterval confidence interval of the mean, cut off at 0 GU; empty for a single reading
 * @param lowest the lowest reading
 * @param spread highest less lowest reading
 */
public record ZoneStatistics(
        int count,
        Gloss mean,
        Optional<Gloss> deviation,
        Optional<Range<Gloss>> meanInterval,
        Gloss lowest,
        Gloss spread) {
    private static final int MOST_READINGS = 100_000;

    public ZoneStatistics {
        Refuse.nulls(ZoneStatistics.class, mean, deviation, meanInterval, lowest, spread);
    }

    /**
     * Figures of some values. The interval is mean plus and minus t s / sqrt(n), t of Student's distribution with n - 1
     * degrees of freedom; it holds for readings that scatter about normally.
     *
     * @param values values of one zone and angle, at least one; none are refused
     * @param confidence how often such an interval holds the mean, 50 to 99.9 %; anything else is refused
     */
    public static ZoneStatistics of(List<Gloss> values, Share confidence) {
        if (values.isEmpty()) {
            throw new InvalidInputException("readings", "none", "at least one clean, dry reading of the angle");
        }
        double level = Sample.probability("confidence", confidence);
        Sample sample = Sample.of(values);
        double lowest = values.stream().mapToDouble(Gloss::gloss).min().orElseThrow();
        double highest = values.stream().mapToDouble(Gloss::gloss).max().orElseThrow();
        Optional<Gloss> deviation = Optional.empty();
        Optional<Range<Gloss>> interval = Optional.empty();
        if (sample.count() > 1) {
            double half = Sample.t(sample.count() - 1, (1 + level) / 2) * sample.error();
            deviation = Optional.of(new Gloss(StrictMath.sqrt(sample.variance())));
            interval = Optional.of(
                    Range.of(new Gloss(Math.max(0, sample.mean() - half)), new Gloss(sample.mean() + half)));
        }
        return new ZoneStatistics(
                sample.count(),
                new Gloss(sample.mean()),
                deviation,
                interval,
                new Gloss(lowest),
                new Gloss(highest - lowest));
    }

    /**
     * Figures by zone, in the order in which zones first occur; empty when no reading is used.
     *
     * @param readings readings of one angle
     * @param confidence as in {@link #of}
     */
    public static Map<String, ZoneStatistics> byZone(ReadingSet readings, Share confidence) {
        Objects.requireNonNull(confidence, "confidence");
        Map<String, ZoneStatistics> byZone = new LinkedHashMap<>();
        readings.valuesByZone().forEach((zone, values) -> byZone.put(zone, of(values, confidence)));
        return byZone;
    }

    /**
     * Whether the readings differ by {@code gloss-paint-rule.range} (5 GU) or more, where ISO 2813:1994 asks for three
     * further readings (from memory). The rule is for paint; coarse stone exceeds it, so this informs and decides
     * nothing.
     */
    public boolean beyondPaintRule(Parameters parameters) {
        return spread.compareTo(parameters.get("gloss-paint-rule.range", Gloss.class)) >= 0;
    }

    /**
     * How many readings give an interval of the mean no wider than plus and minus {@code halfWidth}: the least n of 2 or
     * more with t s / sqrt(n) at most the half width.
     *
     * @param deviation standard deviation of single readings in GU, 0 or more
     * @param halfWidth wanted half width, over 0 GU; one that would need more than 100,000 readings is refused
     * @param confidence 50 to 99.9 %; anything else is refused
     */
    public static int readingsNeeded(Gloss deviation, Gloss halfWidth, Share confidence) {
        double chance = (1 + Sample.probability("confidence", confidence)) / 2;
        int low = 2;
        int high = MOST_READINGS;
        if (halfWidth.gloss() == 0 || halfWidth(deviation, high, chance) > halfWidth.gloss()) {
            throw new InvalidInputException(
                    "half-width",
                    halfWidth.print(),
                    "a half width that " + MOST_READINGS + " readings can give at a deviation of " + deviation.print());
        }
        while (low < high) {
            int middle = (low + high) / 2;
            if (halfWidth(deviation, middle, chance) <= halfWidth.gloss()) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /**
     * Half width of the interval of a mean, t s / sqrt(n).
     *
     * @param deviation standard deviation of single readings
     * @param count how many readings, 2 or more; fewer are refused
     * @param confidence 50 to 99.9 %; anything else is refused
     */
    public static Gloss halfWidth(Gloss deviation, int count, Share confidence) {
        if (count < 2) {
            throw new InvalidInputException("count", Integer.toString(count), "2 readings or more");
        }
        return new Gloss(halfWidth(deviation, count, (1 + Sample.probability("confidence", confidence)) / 2));
    }

    private static double halfWidth(Gloss deviation, int count, double chance) {
        return Sample.t(count - 1, chance) * deviation.gloss() / StrictMath.sqrt(count);
    }
}
