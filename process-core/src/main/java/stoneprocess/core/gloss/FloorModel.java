package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Hardness;

/** The stated priors of a floor and how a reading scatters, as numbers for the grid. */
record FloorModel(
        Hardness hardness,
        GlossCeiling ceiling,
        Parameters parameters,
        double shared,
        double logTau,
        double logTauDeviation,
        double tooFine,
        double leastLeft,
        double mostLeft,
        double scatter,
        double leastScatter,
        double misfit,
        double astray) {
    private static final int QUALITIES = 7;
    private static final double QUALITY_STEP = 0.9;

    /** Three nodes that stand for a standard normal distribution (Gauss and Hermite). */
    private static final double[] HERMITE = {-StrictMath.sqrt(3), 0, StrictMath.sqrt(3)};

    private static final double[] HERMITE_WEIGHT = {1.0 / 6, 2.0 / 3, 1.0 / 6};
    private static final int TAUS = 9;
    private static final double TAU_STEP = 0.6;
    private static final int LEFTS = 10;

    /** Beyond this many standard deviations a reading has gone astray. */
    private static final double FAR = 5;

    static FloorModel of(Hardness hardness, GlossCeiling ceiling, Parameters parameters) {
        Range<Count> passes = parameters.range("gloss-passes." + hardness.key(), Count.class);
        Range<Share> left = parameters.range("gloss-start.left", Share.class);
        if (passes.low().number() == 0 || passes.low().equals(passes.high())) {
            throw new InvalidInputException(
                    "gloss-passes." + hardness.key(),
                    passes.low().print() + " to " + passes.high().print(),
                    "a lower end over 0 and under the upper end");
        }
        if (left.low().percent() == 0
                || left.low().equals(left.high())
                || left.high().percent() > 100) {
            throw new InvalidInputException(
                    "gloss-start.left",
                    left.low().print() + " to " + left.high().print(),
                    "a lower end over 0 % and under the upper end, which is up to 100 %");
        }
        if (parameters.get("gloss-reading.astray", Share.class).percent() == 0) {
            throw new InvalidInputException("gloss-reading.astray", "0 %", "over 0 and under 100 %");
        }
        double level = Sample.probability("gloss-final.level", parameters.get("gloss-final.level", Share.class));
        double width = 2 * NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + level) / 2);
        double low = StrictMath.log(passes.low().number());
        double high = StrictMath.log(passes.high().number());
        return new FloorModel(
                hardness,
                ceiling,
                parameters,
                share("gloss-final.shared", parameters),
                (low + high) / 2,
                (high - low) / width,
                share("gloss-start.too-fine", parameters),
                -StrictMath.log(left.high().percent() / 100),
                -StrictMath.log(left.low().percent() / 100),
                share("gloss-reading.scatter", parameters),
                parameters.get("gloss-reading.least-scatter", Gloss.class).gloss(),
                share("gloss-curve.misfit", parameters),
                share("gloss-reading.astray", parameters));
    }

    private static double share(String name, Parameters parameters) {
        Share share = parameters.get(name, Share.class);
        if (share.percent() >= 100) {
            throw new InvalidInputException(name, share.print(), "under 100 %");
        }
        return share.percent() / 100;
    }

    GritPrior prior(int grit) {
        return GritPrior.of(hardness, grit, ceiling, parameters);
    }

    /** Variance of a mean of some readings about the level that the curve gives, in GU squared. */
    double variance(double level, int readings) {
        double single = Math.max(leastScatter, scatter * level);
        double curve = misfit * level;
        return single * single / readings + curve * curve;
    }

    /**
     * How well a level explains a reading, as a density in 1/GU: normal about the level, but a share of readings goes
     * astray and may show anything.
     */
    double likelihood(LevelReading reading, double level) {
        double variance = variance(level, reading.readings());
        double off = reading.mean().gloss() - level;
        double square = off * off / variance;
        double anything = astray / ceiling.at60().gloss();
        if (!(square < FAR * FAR)) {
            return anything;
        }
        return anything + (1 - astray) * StrictMath.exp(-square / 2) / StrictMath.sqrt(2 * StrictMath.PI * variance);
    }

    /**
     * Every combination of the floor's quality, its old damage and its pace on the grid, with its prior weight. Damage that
     * is as deep as the plan reckons costs the more the deeper it is; damage that is deeper than the plan takes off costs,
     * wholly left, the most. Floors with such damage take three qualities only, since the damage itself spreads them.
     *
     * @param depths how deep the damage may be that the plan takes off, as parts of what it does
     */
    List<Floor> floors(List<Double> depths) {
        List<Floor> floors = new ArrayList<>();
        double[] quality = normal(QUALITIES, QUALITY_STEP);
        double[] pace = normal(TAUS, TAU_STEP);
        for (int t = 0; t < TAUS; t++) {
            double tau = StrictMath.exp(logTau + logTauDeviation * node(t, TAUS, TAU_STEP));
            for (int d = 0; d < depths.size(); d++) {
                for (int q = 0; q < QUALITIES; q++) {
                    double weight = pace[t] * quality[q] * (1 - tooFine) / depths.size();
                    floors.add(new Floor(
                            node(q, QUALITIES, QUALITY_STEP), left(d, depths.size()), depths.get(d), tau, weight));
                }
            }
            for (int l = 0; l < LEFTS; l++) {
                double depth = mostLeft / (mostLeft - left(l, LEFTS));
                for (int q = 0; q < HERMITE.length; q++) {
                    double weight = pace[t] * HERMITE_WEIGHT[q] * tooFine / LEFTS;
                    floors.add(new Floor(HERMITE[q], mostLeft, depth, tau, weight));
                }
            }
        }
        return floors;
    }

    private double left(int index, int count) {
        return leastLeft + (mostLeft - leastLeft) * (index + 0.5) / count;
    }

    static double node(int index, int count, double step) {
        return (index - (count - 1) / 2.0) * step;
    }

    /** Weights of evenly spaced nodes about 0 that stand for a standard normal distribution. */
    static double[] normal(int count, double step) {
        double[] weights = new double[count];
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double z = node(i, count, step);
            weights[i] = StrictMath.exp(-z * z / 2);
            sum += weights[i];
        }
        for (int i = 0; i < count; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /**
     * One floor of the grid.
     *
     * @param quality standing that all grits share, in standard deviations
     * @param damaged attenuation by the old damage, were nothing of it taken off
     * @param depth how deep the damage is, as a part of what the plan takes off
     * @param tau passes of the usual single disc after which 63 % of the way is done
     * @param weight its prior weight
     */
    record Floor(double quality, double damaged, double depth, double tau, double weight) {
        /**
         * Attenuation by the damage that a start leaves, in proportion to the depth that stays.
         *
         * @param takenOff what the start takes off, as a part of what the plan does
         */
        double left(double takenOff) {
            return damaged * Math.max(0, 1 - takenOff / depth);
        }
    }
}
