package stoneprocess.core.gloss;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Hardness;

/**
 * What a resin grit finally gives at 60 degrees before anything is read on the floor: a broad distribution, common
 * practice with low confidence. The attenuation a = ln(ceiling / gloss), the square of the optical roughness, is
 * log-normal, so that no value lies over the ceiling.
 *
 * @param grit the listed grit number that the figures are for
 * @param ceiling what the stone would read at 60 degrees if it were smooth, over 0
 * @param logMedian median of ln a
 * @param logDeviation standard deviation of ln a, over 0
 */
public record GritPrior(int grit, Gloss ceiling, double logMedian, double logDeviation) {
    /** Classes of stone for which values are listed. Soft stone is honed at most; no value is in use. */
    public static final List<Hardness> CLASSES = List.of(Hardness.MEDIUM, Hardness.HARD);

    private static final String PREFIX = "gloss-final.";
    /** Parts of the ceiling at which a band that reaches up to it is cut off, so that both logarithms exist. */
    private static final double UPPER_END = 0.99;

    private static final double LOWER_END = 0.98;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    public GritPrior {
        Refuse.nulls(GritPrior.class, ceiling);
        if (!(logDeviation > 0) || !Double.isFinite(logMedian) || ceiling.gloss() == 0) {
            throw new InvalidInputException(
                    "prior", logMedian + ", " + logDeviation, "a finite median and a deviation and ceiling over 0");
        }
    }

    /** True of resin grits that can be foretold, {@code gloss-final.grits}. */
    public static boolean covers(int grit, Parameters parameters) {
        return foretold(parameters).contains(new Count(grit));
    }

    private static Range<Count> foretold(Parameters parameters) {
        return parameters.range(PREFIX + "grits", Count.class);
    }

    /**
     * The figures of the listed grit that is nearest by ratio. The band from {@code gloss-final.<class>.<grit>.low} to
     * {@code .high} holds the middle {@code gloss-final.level} of floors; where it reaches up to the ceiling it is cut
     * off just below.
     *
     * @param hardness medium or hard; soft is refused
     * @param grit resin grit number within {@code gloss-final.grits}; anything else is refused
     * @param ceiling what the stone would read if it were smooth
     * @param parameters the bands; a lower end that is not over 0 and under the upper end is refused
     */
    public static GritPrior of(Hardness hardness, int grit, GlossCeiling ceiling, Parameters parameters) {
        if (!CLASSES.contains(hardness)) {
            throw new InvalidInputException("hardness", hardness.key(), "medium or hard");
        }
        if (!covers(grit, parameters)) {
            Range<Count> foretold = foretold(parameters);
            throw new InvalidInputException(
                    "grit",
                    Integer.toString(grit),
                    "a resin grit from " + (int) foretold.low().number() + " to "
                            + (int) foretold.high().number());
        }
        int listed = nearest(hardness, grit, parameters);
        String name = PREFIX + hardness.key() + "." + listed;
        Range<Gloss> band = parameters.range(name, Gloss.class);
        if (band.low().gloss() == 0 || band.low().equals(band.high())) {
            throw new InvalidInputException(
                    name,
                    band.low().print() + " to " + band.high().print(),
                    "a lower end over 0 GU and under the upper end");
        }
        double most = ceiling.at60().gloss();
        double little =
                StrictMath.log(StrictMath.log(most / Math.min(band.high().gloss(), UPPER_END * most)));
        double much = StrictMath.log(StrictMath.log(most / Math.min(band.low().gloss(), LOWER_END * most)));
        double level = Sample.probability("gloss-final.level", parameters.get("gloss-final.level", Share.class));
        double width = 2 * NORMAL.inverseCumulativeProbability((1 + level) / 2);
        return new GritPrior(listed, ceiling.at60(), (little + much) / 2, (much - little) / width);
    }

    private static int nearest(Hardness hardness, int grit, Parameters parameters) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        String start = PREFIX + hardness.key() + ".";
        for (var parameter : parameters.all()) {
            if (parameter.name().startsWith(start) && parameter.name().endsWith(".low")) {
                int listed = Integer.parseInt(parameter.name().split("\\.")[2]);
                double ratio = (double) Math.max(listed, grit) / Math.min(listed, grit);
                if (ratio < least) {
                    least = ratio;
                    nearest = listed;
                }
            }
        }
        return nearest;
    }

    /** The middle value. */
    public Gloss median() {
        return new Gloss(limit(0, 0));
    }

    /**
     * Where a floor that was started right lies with the given probability, at equal chances of lying under and over.
     *
     * @param level 50 to 99.9 %; anything else is refused
     */
    public Range<Gloss> interval(Share level) {
        double z = NORMAL.inverseCumulativeProbability((1 + Sample.probability("level", level)) / 2);
        return Range.of(new Gloss(limit(-z, 0)), new Gloss(limit(z, 0)));
    }

    /**
     * Final value of a floor in GU.
     *
     * @param standing how the floor stands among others, in standard deviations; higher is glossier
     * @param left attenuation by old damage that this start has left
     */
    double limit(double standing, double left) {
        double attenuation = StrictMath.exp(logMedian - logDeviation * standing) + left;
        return ceiling.gloss() * StrictMath.exp(-attenuation);
    }
}
