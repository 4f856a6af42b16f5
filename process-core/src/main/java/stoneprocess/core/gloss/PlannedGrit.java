package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;

/**
 * Work still to be done with one resin grit.
 *
 * @param grit resin grit number, see {@link GritPrior#of}
 * @param passes wet passes, 0 to 1000
 * @param intensity what a pass takes off beside one of the usual single disc, over 0 %; see {@link GritStage}
 */
public record PlannedGrit(int grit, int passes, Share intensity) {
    private static final double ROUNDING = 1e-9;

    public PlannedGrit {
        Refuse.nulls(PlannedGrit.class, intensity);
        GritStage.passes(passes);
        GritStage.requireIntensity(intensity);
    }

    /** Passes of the usual single disc. */
    public PlannedGrit(int grit, int passes) {
        this(grit, passes, GritStage.SINGLE_DISC);
    }

    /** Its passes in passes of the usual single disc. */
    double work() {
        return passes * intensity.percent() / 100;
    }

    /** How many of its passes are left when so much has been done with its grit; none or fewer when it is done. */
    public int passesAfter(GritStage done) {
        double left = (work() - done.work(done.passes())) * 100 / intensity.percent();
        return (int) StrictMath.ceil(left - ROUNDING);
    }
}
