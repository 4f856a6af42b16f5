package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;

/**
 * How often the 90 % intervals hold the truth. Floors are drawn without the grid: from the stated priors, and from a
 * world that the forecast does not know, with another curve and heavier scatter.
 */
final class ForecastWorlds {
    private static final Parameters STANDARD = Parameters.standard();
    private static final int RUNS = Boolean.getBoolean("audit.whole") ? 2000 : 1000;
    private static final int[] GRITS = {200, 400, 800, 1500, 3000};

    private ForecastWorlds() {}

    /** How gloss goes from a start to a limit, and how readings scatter. */
    interface World {
        double remaining(double passes, double tau, Random random);

        double scatter(Random random);
    }

    static final World AS_STATED = new World() {
        @Override
        public double remaining(double passes, double tau, Random random) {
            return StrictMath.exp(-passes / tau);
        }

        @Override
        public double scatter(Random random) {
            return random.nextGaussian();
        }
    };

    /** A hyperbola with a long tail instead of an exponential; scatter of Student's t with 3 degrees. */
    static final World OTHER = new World() {
        @Override
        public double remaining(double passes, double tau, Random random) {
            return 1 / (1 + passes / tau);
        }

        @Override
        public double scatter(Random random) {
            double squares = 0;
            for (int i = 0; i < 3; i++) {
                double normal = random.nextGaussian();
                squares += normal * normal;
            }
            return random.nextGaussian() / StrictMath.sqrt(squares / 3);
        }
    };

    /** Percent of the runs, in all and by the number of times that each grit was read. */
    record Coverage(double all, List<Double> byOccasions) {}

    static Coverage coverage(World world, long seed, String name) {
        Random random = new Random(seed);
        int[] held = new int[4];
        int[] runs = new int[4];
        for (int run = 0; run < RUNS; run++) {
            int occasions = run % 4;
            runs[occasions]++;
            if (holds(world, random, occasions)) {
                held[occasions]++;
            }
        }
        int all = held[0] + held[1] + held[2] + held[3];
        List<Double> byOccasions = new ArrayList<>();
        System.out.printf("90 %% intervals, %s: %.2f %% of %d runs", name, 100.0 * all / RUNS, RUNS);
        for (int i = 0; i < 4; i++) {
            byOccasions.add(100.0 * held[i] / runs[i]);
            System.out.printf("; after %d occasions %.1f %%", i, 100.0 * held[i] / runs[i]);
        }
        System.out.println();
        return new Coverage(100.0 * all / RUNS, byOccasions);
    }

    /** One floor: some grits worked and read, then the end of a later grit, or of the grit in work, predicted. */
    private static boolean holds(World world, Random random, int occasions) {
        Hardness hardness = random.nextBoolean() ? Hardness.HARD : Hardness.MEDIUM;
        GlossCeiling ceiling = GlossCeiling.of(hardness == Hardness.HARD ? Family.GRANITE : Family.CALCITE_MARBLE)
                .orElseThrow();
        double most = ceiling.at60().gloss();
        double shared = percent("gloss-final.shared");
        double quality = random.nextGaussian();
        double left = 0;
        if (random.nextDouble() < percent("gloss-start.too-fine")) {
            double least = -StrictMath.log(percent("gloss-start.left.high"));
            left = least + random.nextDouble() * (-StrictMath.log(percent("gloss-start.left.low")) - least);
        }
        Range<Count> passes = STANDARD.range("gloss-passes." + hardness.key(), Count.class);
        double low = StrictMath.log(passes.low().number());
        double high = StrictMath.log(passes.high().number());
        double tau = StrictMath.exp((low + high) / 2 + random.nextGaussian() * (high - low) / (2 * 1.2815515655));
        double level = random.nextDouble() * most;
        int first = random.nextInt(2);
        int stages = 1 + random.nextInt(2);
        int ahead = random.nextInt(2);
        List<GritStage> done = new ArrayList<>();
        List<PlannedGrit> plan = new ArrayList<>();
        double truth = 0;
        for (int i = 0; i < stages + ahead; i++) {
            int grit = GRITS[first + i];
            double standing = StrictMath.sqrt(shared) * quality + StrictMath.sqrt(1 - shared) * random.nextGaussian();
            GritPrior prior = GritPrior.of(hardness, grit, ceiling, STANDARD);
            double limit =
                    most * StrictMath.exp(-StrictMath.exp(prior.logMedian() - prior.logDeviation() * standing) - left);
            double target = i == 0 ? limit : Math.max(limit, level);
            int count = 4 + random.nextInt(7);
            List<LevelReading> readings = new ArrayList<>();
            for (int r = 0; i < stages && r < occasions; r++) {
                int at = 1 + random.nextInt(count);
                double there = target - (target - level) * world.remaining(at, tau, random);
                readings.add(read(world, random, at, there, most));
            }
            int end = i == stages - 1 ? count + random.nextInt(6) : count;
            double reached = target - (target - level) * world.remaining(end, tau, random);
            if (i < stages) {
                done.add(new GritStage(grit, count, readings));
                if (i == stages - 1) {
                    plan.add(new PlannedGrit(grit, end - count));
                }
            } else {
                plan.add(new PlannedGrit(grit, end));
            }
            level = reached;
            truth = reached;
        }
        List<GlossPrediction> predicted = GlossForecast.of(
                        new WorkSoFar(hardness, ceiling, Optional.empty(), done), STANDARD)
                .through(plan);
        return predicted.get(predicted.size() - 1).interval().contains(new Gloss(truth));
    }

    private static LevelReading read(World world, Random random, int passes, double level, double most) {
        int count = 1 + random.nextInt(6);
        double single = Math.max(
                STANDARD.get("gloss-reading.least-scatter", Gloss.class).gloss(),
                percent("gloss-reading.scatter") * level);
        double mean = 0;
        for (int i = 0; i < count; i++) {
            mean += (level + single * world.scatter(random)) / count;
        }
        mean += percent("gloss-curve.misfit") * level * random.nextGaussian();
        if (random.nextDouble() < percent("gloss-reading.astray")) {
            mean = most * random.nextDouble();
        }
        return new LevelReading(passes, new Gloss(Math.max(0, Math.min(most, mean))), count);
    }

    private static double percent(String name) {
        return STANDARD.get(name, Share.class).percent() / 100;
    }
}
