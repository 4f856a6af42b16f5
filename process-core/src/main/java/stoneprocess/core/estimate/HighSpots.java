package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * Where a step cuts down what stands proud, and what it does elsewhere.
 *
 * @param share of the floor that takes all passes of the step, 0 to 100 %
 * @param depth what the step takes off elsewhere
 * @param passes traverses of a bay elsewhere, 1 to 1000
 */
public record HighSpots(Share share, Range<Length> depth, Range<Integer> passes) {
    public HighSpots {
        Refuse.nulls(HighSpots.class, share, depth, passes);
        Require.upTo100("high-spots.share", share);
        JobStep.requirePasses("high-spots.passes", passes);
    }

    /** The mean over the floor of what a step has where it is proud and what it has elsewhere. */
    double mean(double proud, double elsewhere) {
        double part = share.percent() / 100;
        return part * proud + (1 - part) * elsewhere;
    }
}
