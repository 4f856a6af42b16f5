package stoneprocess.core.gloss;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * What a step of the work has brought.
 *
 * @param verdict whether the gain is real
 * @param change mean after less mean before
 * @param interval where the true change lies, two-sided; empty when readings are missing
 * @param chance how likely scatter alone gives such a gain or more: one-sided p of Welch's test, in percent; empty when
 *     readings are missing or none scatters
 * @param missingBefore readings that are missing before the step until scatter is known, 0 when there are enough
 * @param missingAfter the same after the step
 */
public record Gain(
        GainVerdict verdict,
        GlossChange change,
        Optional<Range<GlossChange>> interval,
        Optional<Share> chance,
        int missingBefore,
        int missingAfter) {
    private static final int ENOUGH = 2;

    public Gain {
        Refuse.nulls(Gain.class, verdict, change, interval, chance);
    }

    /**
     * Compares readings of one zone and angle before and after a step with Welch's t test: standard error e = sqrt(s1^2
     * / n1 + s2^2 / n2), degrees of freedom e^4 / (s1^4 / (n1^2 (n1 - 1)) + s2^4 / (n2^2 (n2 - 1))). The gain is real
     * when it exceeds {@code gloss-meter.repeatability} by the margin t e at the one-sided confidence
     * {@code gloss-gain.confidence}. The margin is never less than either side alone would ask for, t s / sqrt(n) with
     * n - 1 degrees: Welch's degrees rise when the steadier side scatters more, and wider scatter must not make a
     * verdict firmer.
     *
     * @param before values before the step, at least one; none are refused
     * @param after values after the step, at least one; none are refused
     * @param parameters the two named above
     */
    public static Gain of(List<Gloss> before, List<Gloss> after, Parameters parameters) {
        require("before", before);
        require("after", after);
        Sample first = Sample.of(before);
        Sample second = Sample.of(after);
        double change = second.mean() - first.mean();
        int missingBefore = Math.max(0, ENOUGH - first.count());
        int missingAfter = Math.max(0, ENOUGH - second.count());
        if (missingBefore + missingAfter > 0) {
            return new Gain(
                    GainVerdict.NOT_ENOUGH_READINGS,
                    new GlossChange(change),
                    Optional.empty(),
                    Optional.empty(),
                    missingBefore,
                    missingAfter);
        }
        double confidence =
                Sample.probability("gloss-gain.confidence", parameters.get("gloss-gain.confidence", Share.class));
        double meter = parameters.get("gloss-meter.repeatability", Gloss.class).gloss();
        boolean real = change - margin(first, second, confidence) > meter;
        double half = margin(first, second, (1 + confidence) / 2);
        return new Gain(
                real ? GainVerdict.REAL : GainVerdict.WITHIN_SCATTER,
                new GlossChange(change),
                Optional.of(Range.of(new GlossChange(change - half), new GlossChange(change + half))),
                chance(first, second),
                0,
                0);
    }

    private static void require(String side, List<Gloss> values) {
        if (values.isEmpty()) {
            throw new InvalidInputException(side, "none", "at least one clean, dry reading");
        }
    }

    private static double margin(Sample first, Sample second, double chance) {
        double alone = Math.max(
                Sample.t(first.count() - 1, chance) * first.error(),
                Sample.t(second.count() - 1, chance) * second.error());
        double error = error(first, second);
        return error == 0 ? 0 : Math.max(alone, Sample.t(degrees(first, second), chance) * error);
    }

    private static Optional<Share> chance(Sample first, Sample second) {
        double error = error(first, second);
        if (error == 0) {
            return Optional.empty();
        }
        double t = (second.mean() - first.mean()) / error;
        return Optional.of(
                new Share(100 * TDistribution.of(degrees(first, second)).survivalProbability(t)));
    }

    private static double error(Sample first, Sample second) {
        return StrictMath.sqrt(first.error() * first.error() + second.error() * second.error());
    }

    private static double degrees(Sample first, Sample second) {
        double before = first.error() * first.error();
        double after = second.error() * second.error();
        return (before + after)
                * (before + after)
                / (before * before / (first.count() - 1) + after * after / (second.count() - 1));
    }
}
