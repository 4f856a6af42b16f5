package stoneprocess.core.gloss;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;

/** Count, mean and variance of some values, unrounded, for the statistics of this room. */
record Sample(int count, double mean, double variance) {
    static Sample of(List<Gloss> values) {
        double mean = values.stream().mapToDouble(Gloss::gloss).sum() / values.size();
        double squares = 0;
        for (Gloss value : values) {
            squares += (value.gloss() - mean) * (value.gloss() - mean);
        }
        return new Sample(values.size(), mean, values.size() < 2 ? 0 : squares / (values.size() - 1));
    }

    /** Standard error of the mean. */
    double error() {
        return StrictMath.sqrt(variance / count);
    }

    /** Quantile of Student's t for a chance in 0 to 1. */
    static double t(double degrees, double chance) {
        return TDistribution.of(degrees).inverseCumulativeProbability(chance);
    }

    /** A probability from 0 to 1; outside 50 to 99.9 % it is refused under the name given. */
    static double probability(String name, Share confidence) {
        if (!(confidence.percent() >= 50 && confidence.percent() <= 99.9)) {
            throw new InvalidInputException(name, confidence.print(), "50 to 99.9 %");
        }
        return confidence.percent() / 100;
    }
}
