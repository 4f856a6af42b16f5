package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;

class GlossForecastTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final double LEAST_SCATTER =
            STANDARD.get("gloss-reading.least-scatter", Gloss.class).gloss();
    private static final double SCATTER = percent("gloss-reading.scatter");
    private static final double MISFIT = percent("gloss-curve.misfit");
    private static final double ASTRAY = percent("gloss-reading.astray");
    private static final GlossCeiling MARBLE =
            GlossCeiling.of(Family.CALCITE_MARBLE).orElseThrow();
    private static final List<PlannedGrit> TO_THE_END =
            List.of(new PlannedGrit(800, 8), new PlannedGrit(1500, 8), new PlannedGrit(3000, 8));

    private static GritStage stage(int grit, int passes, double gloss, int readings) {
        return new GritStage(grit, passes, List.of(new LevelReading(passes, new Gloss(gloss), readings)));
    }

    private static GlossForecast marble(GritStage... stages) {
        return GlossForecast.of(new WorkSoFar(Hardness.MEDIUM, MARBLE, Optional.empty(), List.of(stages)), STANDARD);
    }

    private static double width(GlossPrediction prediction) {
        return prediction.interval().high().gloss()
                - prediction.interval().low().gloss();
    }

    private static void assertNotUnder(GlossPrediction later, GlossPrediction earlier) {
        assertThat(later.median()).isGreaterThanOrEqualTo(earlier.median());
        assertThat(later.interval().low())
                .isGreaterThanOrEqualTo(earlier.interval().low());
        assertThat(later.interval().high())
                .isGreaterThanOrEqualTo(earlier.interval().high());
    }

    @Property(tries = 500, seed = "1955")
    void passes_and_gloss_of_a_curve_are_inverse(
            @ForAll @DoubleRange(min = 0, max = 100) double start,
            @ForAll @DoubleRange(min = 0, max = 100) double limit,
            @ForAll @DoubleRange(min = 0.5, max = 10) double tau,
            @ForAll @DoubleRange(min = 0, max = 3) double taus) {
        SaturationCurve curve = new SaturationCurve(new Gloss(start), new Gloss(limit), tau);
        Gloss reached = curve.after(taus * tau);
        if (Math.abs(start - limit) > 1) {
            assertThat(curve.passesTo(reached)).isCloseTo(taus * tau, Offset.offset(0.03));
            assertThat(curve.after(curve.passesTo(reached)).gloss()).isCloseTo(reached.gloss(), Offset.offset(2e-4));
        }
        assertThat(reached.gloss()).isBetween(Math.min(start, limit) - 1e-4, Math.max(start, limit) + 1e-4);
    }

    @Property(tries = 30, seed = "1955")
    void no_prediction_lies_over_the_ceiling(
            @ForAll @DoubleRange(min = 0, max = 105) double read,
            @ForAll @IntRange(min = 0, max = 12) int passes,
            @ForAll Family family) {
        GlossCeiling ceiling = GlossCeiling.of(family).orElse(GlossCeiling.ofAnyStone());
        double possible = Math.min(read, ceiling.at60().gloss());
        GlossForecast forecast = GlossForecast.of(
                new WorkSoFar(
                        Hardness.MEDIUM,
                        ceiling,
                        Optional.of(new LevelReading(0, new Gloss(possible), 1)),
                        List.of(stage(400, passes, possible, 3))),
                STANDARD);
        List<GlossPrediction> predictions = new ArrayList<>(forecast.through(TO_THE_END));
        predictions.add(forecast.afterMorePasses(1000));
        assertThat(predictions).allSatisfy(prediction -> {
            assertThat(prediction.interval().high()).isLessThanOrEqualTo(ceiling.at60());
            assertThat(prediction.interval().contains(prediction.median())).isTrue();
        });
        assertThat(forecast.probability(new Gloss(ceiling.at60().gloss() + 1), TO_THE_END))
                .isEqualTo(new Share(0));
    }

    @Property(tries = 25, seed = "1955")
    void more_passes_of_a_finer_grit_never_lower_the_prediction(
            @ForAll @DoubleRange(min = 1, max = 100) double read400,
            @ForAll @DoubleRange(min = 1, max = 100) double read800,
            @ForAll @IntRange(min = 0, max = 8) int passes) {
        GlossForecast forecast = marble(stage(400, 6, read400, 1), stage(800, passes, read800, 2));
        for (int more = 0; more < 12; more++) {
            assertNotUnder(forecast.afterMorePasses(more + 1), forecast.afterMorePasses(more));
        }
        List<GlossPrediction> few = forecast.through(List.of(new PlannedGrit(800, 2), new PlannedGrit(1500, 4)));
        List<GlossPrediction> many = forecast.through(List.of(new PlannedGrit(800, 5), new PlannedGrit(1500, 9)));
        assertNotUnder(many.get(1), few.get(1));
        assertNotUnder(few.get(1), few.get(0));
    }

    /** Each floor of the grid obeys this exactly; the median over floors may shift by a part of a unit. */
    @Property(tries = 15, seed = "1955")
    void more_passes_of_a_first_grit_never_lower_the_prediction_below_its_limit(
            @ForAll @DoubleRange(min = 0, max = 100) double start) {
        GlossForecast forecast = GlossForecast.of(
                new WorkSoFar(
                        Hardness.MEDIUM,
                        MARBLE,
                        Optional.of(new LevelReading(0, new Gloss(start), 3)),
                        List.of(new GritStage(400, 0, List.of()))),
                STANDARD);
        Gloss limit = forecast.afterMorePasses(1000).median();
        for (int more = 0; more < 10; more++) {
            double before = forecast.afterMorePasses(more).median().gloss();
            assertThat(forecast.afterMorePasses(more + 1).median().gloss())
                    .isGreaterThanOrEqualTo(Math.min(before, limit.gloss()) - 0.25);
        }
    }

    @Test
    void a_coarser_grit_may_dull_a_floor_and_a_finer_one_may_not() {
        GlossForecast polished = marble(stage(3000, 8, 75, 6));
        assertThat(polished.through(List.of(new PlannedGrit(400, 8))).get(0).median())
                .isLessThan(new Gloss(30));
        assertThat(polished.through(List.of(new PlannedGrit(6000, 8))).get(0).median())
                .isGreaterThanOrEqualTo(polished.afterMorePasses(0).median());
    }

    @Test
    void each_reading_narrows_the_grit_in_work_and_those_that_follow() {
        GlossForecast unread = marble(new GritStage(400, 6, List.of()), new GritStage(800, 4, List.of()));
        GlossForecast once = marble(new GritStage(400, 6, List.of()), stage(800, 4, 26, 3));
        GlossForecast twice = marble(stage(400, 6, 12, 3), stage(800, 4, 26, 3));
        List<PlannedGrit> plan = List.of(new PlannedGrit(800, 4), new PlannedGrit(1500, 8), new PlannedGrit(3000, 8));
        for (int i = 0; i < plan.size(); i++) {
            double before = width(unread.through(plan).get(i));
            double after = width(once.through(plan).get(i));
            assertThat(after).isLessThan(before);
            assertThat(width(twice.through(plan).get(i))).isLessThan(after);
        }
    }

    @Test
    void a_floor_that_reads_glossier_than_usual_promises_more_from_finer_grits() {
        Gloss bright = marble(stage(800, 8, 42, 5)).through(TO_THE_END).get(2).median();
        Gloss dull = marble(stage(800, 8, 18, 5)).through(TO_THE_END).get(2).median();
        assertThat(bright.gloss()).isGreaterThan(dull.gloss() + 5);
    }

    @Test
    void a_prediction_says_what_it_rests_on() {
        GlossForecast defaults = GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), STANDARD);
        assertThat(defaults.through(TO_THE_END)).allSatisfy(prediction -> {
            assertThat(prediction.basis().defaultsOnly()).isTrue();
            assertThat(prediction.basis().sources())
                    .extracting(source -> source.id())
                    .containsExactly("practice", "GLOSS-SATURATION");
        });
        ForecastBasis read = marble(stage(400, 6, 12, 3), stage(800, 4, 26, 2)).basis();
        assertThat(read.defaultsOnly()).isFalse();
        assertThat(read.readings()).isEqualTo(5);
        assertThat(read.occasions()).isEqualTo(2);
        Parameters house = STANDARD.with("gloss-final.medium.800.low", new Gloss(20));
        assertThat(GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), house)
                        .basis()
                        .sources())
                .extracting(source -> source.id())
                .contains("house");
    }

    @Test
    void the_same_work_gives_the_same_figures() {
        assertThat(marble(stage(400, 6, 12, 3)).through(TO_THE_END))
                .isEqualTo(marble(stage(400, 6, 12, 3)).through(TO_THE_END));
    }

    @Test
    void a_target_is_reached_by_passes_by_a_finer_grit_or_not_at_all() {
        assertThat(marble(stage(800, 8, 40, 5))
                        .outlook(new Gloss(30), TO_THE_END)
                        .verdict())
                .isEqualTo(TargetVerdict.REACHED);
        GlossForecast early = GlossForecast.of(
                new WorkSoFar(
                        Hardness.MEDIUM,
                        MARBLE,
                        Optional.of(new LevelReading(0, new Gloss(3), 5)),
                        List.of(stage(800, 2, 20, 6))),
                STANDARD);
        TargetOutlook passes = early.outlook(new Gloss(25), TO_THE_END);
        assertThat(passes.verdict()).isEqualTo(TargetVerdict.MORE_PASSES);
        assertThat(passes.reachedBy().orElseThrow().grit()).isEqualTo(800);
        assertThat(passes.reachedBy().orElseThrow().passes()).isGreaterThan(2);
        TargetOutlook finer = marble(stage(800, 8, 33, 5)).outlook(new Gloss(50), TO_THE_END);
        assertThat(finer.verdict()).isEqualTo(TargetVerdict.FINER_GRIT);
        assertThat(finer.reachedBy().orElseThrow().grit()).isEqualTo(3000);
        assertThat(marble(stage(800, 8, 33, 5))
                        .outlook(new Gloss(60), List.of())
                        .verdict())
                .isEqualTo(TargetVerdict.OUT_OF_REACH);
        assertThat(marble(stage(800, 8, 33, 5))
                        .outlook(new Gloss(75), TO_THE_END)
                        .verdict())
                .isEqualTo(TargetVerdict.OPEN);
        assertThat(marble().outlook(new Gloss(110), TO_THE_END).verdict()).isEqualTo(TargetVerdict.OVER_CEILING);
    }

    @Test
    void one_reading_that_went_astray_does_not_break_the_forecast() {
        GlossPrediction usual = marble(stage(200, 8, 6, 3)).afterMorePasses(2);
        GlossPrediction filmed = GlossForecast.of(
                        new WorkSoFar(
                                Hardness.MEDIUM,
                                MARBLE,
                                Optional.empty(),
                                List.of(new GritStage(
                                        200,
                                        8,
                                        List.of(
                                                new LevelReading(4, new Gloss(90), 1),
                                                new LevelReading(8, new Gloss(6), 3))))),
                        STANDARD)
                .afterMorePasses(2);
        assertThat(filmed.median().gloss()).isCloseTo(usual.median().gloss(), Offset.offset(1.0));
        Range<Gloss> of200 =
                GritPrior.of(Hardness.MEDIUM, 200, MARBLE, STANDARD).interval(new Share(95));
        assertThat(GlossCheck.of(new Gloss(55), Geometry.DEG_60, MARBLE, of200, STANDARD)
                        .suspicion())
                .isEqualTo(GlossSuspicion.FILM);
    }

    /** The grid against weighted draws from the same priors, without any grid; densities of Commons Math 3.6.1. */
    @Tag("slow")
    @Test
    void the_grid_agrees_with_weighted_draws() {
        int passes400 = 5;
        int passes800 = 6;
        double read400 = 10;
        double read800 = 24;
        GlossPrediction grid = marble(stage(400, passes400, read400, 2), stage(800, passes800, read800, 2))
                .through(List.of(new PlannedGrit(1500, 4)))
                .get(0);
        FloorModel model = FloorModel.of(Hardness.MEDIUM, MARBLE, STANDARD);
        GritPrior of400 = model.prior(400);
        GritPrior of800 = model.prior(800);
        GritPrior of1500 = model.prior(1500);
        Random random = new Random(163);
        List<double[]> draws = new ArrayList<>();
        double total = 0;
        for (int i = 0; i < 400_000; i++) {
            double quality = random.nextGaussian();
            double left = random.nextDouble() < model.tooFine()
                    ? model.leastLeft() + random.nextDouble() * (model.mostLeft() - model.leastLeft())
                    : 0;
            double tau = StrictMath.exp(model.logTau() + model.logTauDeviation() * random.nextGaussian());
            double level = random.nextDouble() * MARBLE.at60().gloss();
            double limit = drawn(model, of400, quality, left, random);
            level = limit - (limit - level) * StrictMath.exp(-passes400 / tau);
            double weight = density(read400, level);
            limit = Math.max(level, drawn(model, of800, quality, left, random));
            level = limit - (limit - level) * StrictMath.exp(-passes800 / tau);
            weight *= density(read800, level);
            limit = Math.max(level, drawn(model, of1500, quality, left, random));
            level = limit - (limit - level) * StrictMath.exp(-4 / tau);
            draws.add(new double[] {level, weight});
            total += weight;
        }
        draws.sort(Comparator.comparingDouble(draw -> draw[0]));
        double[] parts = {0.05, 0.5, 0.95};
        double[] found = new double[3];
        double sum = 0;
        for (double[] draw : draws) {
            for (int i = 0; i < 3; i++) {
                if (sum < parts[i] * total && sum + draw[1] >= parts[i] * total) {
                    found[i] = draw[0];
                }
            }
            sum += draw[1];
        }
        double[] predicted = {
            grid.interval().low().gloss(),
            grid.median().gloss(),
            grid.interval().high().gloss()
        };
        System.out.printf("Grid %s, draws %s%n", Arrays.toString(predicted), Arrays.toString(found));
        for (int i = 0; i < 3; i++) {
            assertThat(predicted[i]).isCloseTo(found[i], Offset.offset(1.5));
        }
    }

    /** Density of the mean of two readings, from the stated scatter. */
    private static double density(double read, double level) {
        double single = Math.max(LEAST_SCATTER, SCATTER * level);
        double deviation = StrictMath.hypot(single / StrictMath.sqrt(2), MISFIT * level);
        return ASTRAY / MARBLE.at60().gloss()
                + (1 - ASTRAY) * new NormalDistribution(null, level, deviation).density(read);
    }

    private static double percent(String name) {
        return STANDARD.get(name, Share.class).percent() / 100;
    }

    private static double drawn(FloorModel model, GritPrior prior, double quality, double left, Random random) {
        double shared = model.shared();
        double standing = StrictMath.sqrt(shared) * quality + StrictMath.sqrt(1 - shared) * random.nextGaussian();
        return prior.limit(standing, left);
    }

    /** Gloss classes by last grit: common practice, no source. Honed under 15, then 15-35, 35-60, 60-80, over 80. */
    @ParameterizedTest
    @CsvSource({"200, 0, 15", "400, 5, 15", "800, 15, 35", "1500, 35, 60", "3000, 60, 80", "6000, 78, 100"})
    void the_middle_of_each_prior_lies_in_the_class_of_its_grit(int grit, double low, double high) {
        GlossCeiling granite = GlossCeiling.of(Family.GRANITE).orElseThrow();
        assertThat(GritPrior.of(Hardness.MEDIUM, grit, MARBLE, STANDARD)
                        .median()
                        .gloss())
                .isBetween(low, high);
        assertThat(GritPrior.of(Hardness.HARD, grit, granite, STANDARD).median().gloss())
                .isBetween(low, high);
    }

    @Test
    void a_prior_holds_its_band_and_stays_under_the_ceiling() {
        GlossCeiling granite = GlossCeiling.of(Family.GRANITE).orElseThrow();
        Range<Gloss> band = STANDARD.range("gloss-final.hard.800", Gloss.class);
        Range<Gloss> middle =
                GritPrior.of(Hardness.HARD, 800, granite, STANDARD).interval(new Share(80));
        assertThat(middle.low().gloss()).isCloseTo(band.low().gloss(), Offset.offset(0.01));
        assertThat(middle.high().gloss()).isCloseTo(band.high().gloss(), Offset.offset(0.01));
        Parameters glassy = STANDARD.with("gloss-final.hard.6000.high", new Gloss(120));
        assertThat(GritPrior.of(Hardness.HARD, 6000, granite, glassy)
                        .interval(new Share(99.9))
                        .high())
                .isLessThan(granite.at60());
    }

    @ParameterizedTest
    @CsvSource({"220, 200", "60, 50", "1000, 800", "2000, 1500", "10000, 6000"})
    void a_number_that_is_not_listed_takes_the_nearest_by_ratio(int grit, int listed) {
        assertThat(GritPrior.of(Hardness.HARD, grit, MARBLE, STANDARD).grit()).isEqualTo(listed);
    }

    @Test
    void work_that_cannot_be_is_refused() {
        refused(() -> WorkSoFar.none(Hardness.SOFT, MARBLE), "hardness: 'soft'");
        refused(() -> GritPrior.of(Hardness.SOFT, 400, MARBLE, STANDARD), "hardness: 'soft'");
        refused(() -> GritPrior.of(Hardness.HARD, 16, MARBLE, STANDARD), "grit: '16'");
        refused(() -> new GritStage(400, -1, List.of()), "passes: '-1'");
        refused(() -> new PlannedGrit(400, 1001), "passes: '1001'");
        refused(() -> new GritStage(400, 3, List.of(new LevelReading(4, new Gloss(3), 1))), "reading.passes: '4'");
        refused(() -> new LevelReading(4, new Gloss(3), 0), "readings: '0'");
        refused(() -> marble(stage(400, 3, 5, 1), stage(400, 3, 5, 1)), "stages.1: '400'");
        refused(() -> marble(stage(400, 3, 120, 1)), "stages.0.mean: '120 GU'");
        refused(
                () -> new WorkSoFar(
                        Hardness.HARD, MARBLE, Optional.of(new LevelReading(1, new Gloss(3), 1)), List.of()),
                "start.passes: '1'");
        refused(() -> marble().afterMorePasses(1), "stages: 'none'");
        refused(() -> marble().probability(new Gloss(5), List.of()), "plan: 'none'");
        refused(() -> marble().through(List.of(new PlannedGrit(400, 2), new PlannedGrit(400, 2))), "plan.1: '400'");
        refused(() -> marble().outlook(new Gloss(0), List.of()), "target: '0 GU'");
        refused(() -> new SaturationCurve(new Gloss(1), new Gloss(2), 0), "tau: ");
        refused(() -> new SaturationCurve(new Gloss(1), new Gloss(20), 3).passesTo(new Gloss(20)), "gloss: '20 GU'");
        refused(() -> new SaturationCurve(new Gloss(1), new Gloss(20), 3).after(-1), "passes: ");
        refused(() -> LevelReading.of(3, ReadingSet.of(List.of(), Geometry.DEG_60)), "readings: 'none'");
        refused(() -> LevelReading.of(3, ReadingSet.of(List.of(), Geometry.DEG_85)), "geometry: '85'");
    }

    @Test
    void numbers_that_make_no_prior_are_refused() {
        Parameters noPace = STANDARD.with("gloss-passes.medium.low", new Count(0));
        refused(() -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), noPace), "gloss-passes.medium: ");
        Parameters noBand = STANDARD.with("gloss-final.medium.400.low", new Gloss(0));
        refused(() -> GritPrior.of(Hardness.MEDIUM, 400, MARBLE, noBand), "gloss-final.medium.400: ");
        Parameters noLeft = STANDARD.with("gloss-start.left.low", new Share(0));
        refused(() -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), noLeft), "gloss-start.left: ");
        Parameters noneAstray = STANDARD.with("gloss-reading.astray", new Share(0));
        refused(() -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), noneAstray), "gloss-reading.astray: ");
        Parameters noLevel = STANDARD.with("gloss-final.level", new Share(0));
        refused(() -> GritPrior.of(Hardness.MEDIUM, 400, MARBLE, noLevel), "gloss-final.level: '0 %'");
        Parameters noForecast = STANDARD.with("gloss-forecast.level", new Share(100));
        refused(
                () -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), noForecast)
                        .through(TO_THE_END),
                "gloss-forecast.level: '100 %'");
        Parameters allShared = STANDARD.with("gloss-final.shared", new Share(100));
        refused(() -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), allShared), "gloss-final.shared: ");
    }

    @Test
    void an_empty_start_prior_is_refused_by_name() {
        for (double end : new double[] {3, 80, 100}) {
            Parameters empty =
                    STANDARD.with("gloss-start.left.low", new Share(end)).with("gloss-start.left.high", new Share(end));
            refused(
                    () -> GlossForecast.of(WorkSoFar.none(Hardness.MEDIUM, MARBLE), empty),
                    "gloss-start.left: '" + new Share(end).print() + " to " + new Share(end).print()
                            + "' is not accepted; accepted: a lower end over 0 % and under the upper end");
        }
        assertThatThrownBy(() -> new WorkSoFar(Hardness.MEDIUM, MARBLE, null, List.of()))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("start");
    }

    @Test
    void readings_that_contradict_each_other_leave_some_floor_possible_however_many_they_are() {
        List<LevelReading> readings = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            readings.add(new LevelReading(1, new Gloss(i % 2 == 0 ? 5 : 90), 3));
        }
        GlossForecast forecast = GlossForecast.of(
                new WorkSoFar(Hardness.MEDIUM, MARBLE, Optional.empty(), List.of(new GritStage(400, 3, readings))),
                STANDARD);
        GlossPrediction end =
                forecast.through(List.of(new PlannedGrit(1500, 4))).get(0);
        assertThat(end.median()).isLessThan(new Gloss(100));
        assertThat(end.interval().low()).isLessThan(end.interval().high());
        assertThat(forecast.outlook(new Gloss(60), List.of(new PlannedGrit(3000, 4)))
                        .best())
                .isPresent();
    }

    private static void refused(Runnable work, String message) {
        assertThatThrownBy(work::run).isInstanceOf(InvalidInputException.class).hasMessageStartingWith(message);
    }
}
