package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.inference.TTest;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;

/** Intervals and tests against published tables of Student's t and a second statistics library (Commons Math). */
class ReadingsValidationTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final Share P95 = new Share(95);

    private static List<Gloss> values(double... values) {
        return DoubleStream.of(values).mapToObj(Gloss::new).toList();
    }

    private static double[] drawn(Random random, int count) {
        double middle = 5 + 80 * random.nextDouble();
        double scatter = 0.1 + 4 * random.nextDouble();
        return DoubleStream.generate(() -> new Gloss(Math.max(0, middle + scatter * random.nextGaussian())).gloss())
                .limit(count)
                .toArray();
    }

    /** Student's t, two-sided 95 %, as in printed tables: 12.706, 4.303, 2.776, 2.262, 2.045 at 1, 2, 4, 9, 29. */
    @ParameterizedTest
    @CsvSource({"2, 12.706", "3, 4.303", "5, 2.776", "10, 2.262", "30, 2.045"})
    void intervals_use_the_printed_table_of_t(int count, double t) {
        double[] values = new double[count];
        Arrays.fill(values, 50);
        values[0] = 53;
        ZoneStatistics zone = ZoneStatistics.of(values(values), P95);
        double half =
                (zone.meanInterval().orElseThrow().high().gloss() - zone.mean().gloss());
        double error = zone.deviation().orElseThrow().gloss() / StrictMath.sqrt(count);
        assertThat(half / error).isCloseTo(t, Offset.offset(0.001));
    }

    /** Commons Math 3.6.1: descriptive statistics and t distribution. */
    @Test
    void a_second_library_gives_the_same_figures_of_a_zone() {
        Random random = new Random(2813);
        for (int run = 0; run < 200; run++) {
            double[] drawn = drawn(random, 2 + random.nextInt(12));
            DescriptiveStatistics expected = new DescriptiveStatistics(drawn);
            double half = new TDistribution(drawn.length - 1).inverseCumulativeProbability(0.975)
                    * expected.getStandardDeviation()
                    / StrictMath.sqrt(drawn.length);
            ZoneStatistics zone = ZoneStatistics.of(values(drawn), P95);
            assertThat(zone.mean().gloss()).isCloseTo(expected.getMean(), Offset.offset(1e-4));
            assertThat(zone.deviation().orElseThrow().gloss())
                    .isCloseTo(expected.getStandardDeviation(), Offset.offset(1e-4));
            assertThat(zone.meanInterval().orElseThrow().low().gloss())
                    .isCloseTo(Math.max(0, expected.getMean() - half), Offset.offset(2e-4));
            assertThat(zone.meanInterval().orElseThrow().high().gloss())
                    .isCloseTo(expected.getMean() + half, Offset.offset(2e-4));
            assertThat(zone.lowest().gloss()).isEqualTo(expected.getMin());
            assertThat(zone.spread().gloss()).isCloseTo(expected.getMax() - expected.getMin(), Offset.offset(1e-4));
        }
    }

    /** Commons Math 3.6.1: Welch's test for unequal variances, halved to one side. */
    @Test
    void a_second_library_gives_the_same_chance_of_a_gain() {
        Random random = new Random(523);
        for (int run = 0; run < 200; run++) {
            double[] before = drawn(random, 2 + random.nextInt(8));
            double[] after = drawn(random, 2 + random.nextInt(8));
            double twoSided = new TTest().tTest(before, after);
            Gain gain = Gain.of(values(before), values(after), STANDARD);
            double oneSided = gain.change().glossUnits() > 0 ? twoSided / 2 : 1 - twoSided / 2;
            assertThat(gain.chance().orElseThrow().percent()).isCloseTo(100 * oneSided, Offset.offset(1e-3));
        }
    }

    /** A mean of ten thousand samples of known mean lies in its 95 % interval in 95 % of them (definition). */
    @Test
    void intervals_hold_the_mean_as_often_as_they_say() {
        Random random = new Random(1908);
        int held = 0;
        int runs = 10_000;
        for (int run = 0; run < runs; run++) {
            double[] drawn = DoubleStream.generate(() -> 50 + 3 * random.nextGaussian())
                    .limit(4)
                    .toArray();
            if (ZoneStatistics.of(values(drawn), P95)
                    .meanInterval()
                    .orElseThrow()
                    .contains(new Gloss(50))) {
                held++;
            }
        }
        System.out.printf("Intervals of the mean at 95 %%: %.2f %% of %d runs%n", 100.0 * held / runs, runs);
        assertThat(100.0 * held / runs).isBetween(94.3, 95.7);
    }

    /** Without any gain, at most one gain in twenty is called real at 95 % (definition of the test's level). */
    @Test
    void a_gain_that_is_none_is_seldom_called_real() {
        Random random = new Random(1947);
        int real = 0;
        int runs = 10_000;
        for (int run = 0; run < runs; run++) {
            double[] before = DoubleStream.generate(() -> 40 + 2 * random.nextGaussian())
                    .limit(5)
                    .toArray();
            double[] after = DoubleStream.generate(() -> 40 + 4 * random.nextGaussian())
                    .limit(5)
                    .toArray();
            if (Gain.of(values(before), values(after), STANDARD).verdict() == GainVerdict.REAL) {
                real++;
            }
        }
        System.out.printf("Gains called real where there is none: %.2f %% of %d runs%n", 100.0 * real / runs, runs);
        assertThat(real).isPositive();
        assertThat(100.0 * real / runs).isLessThan(5.7);
    }

    /** ISO 2813:1994 (from memory): 5 GU between the highest and the lowest reading ask for more; a rule for paint. */
    @Test
    void the_paint_rule_starts_at_5_units() {
        assertThat(ZoneStatistics.of(values(40, 44.9, 42), P95).beyondPaintRule(STANDARD))
                .isFalse();
        assertThat(ZoneStatistics.of(values(40, 45, 42), P95).beyondPaintRule(STANDARD))
                .isTrue();
    }

    /** Printed tables of t: s = 3, half width 2 at 95 %: n = 12 gives 2.201 x 3 / sqrt 12 = 1.906, n = 11 gives 2.015. */
    @Test
    void the_number_of_readings_follows_from_the_table() {
        assertThat(ZoneStatistics.readingsNeeded(new Gloss(3), new Gloss(2), P95))
                .isEqualTo(12);
    }
}
