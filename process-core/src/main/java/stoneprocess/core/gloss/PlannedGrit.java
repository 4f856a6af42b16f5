package stoneprocess.core.gloss;

/**
 * Work still to be done with one resin grit.
 *
 * @param grit resin grit number, see {@link GritPrior#of}
 * @param passes wet passes, 0 to 1000
 */
public record PlannedGrit(int grit, int passes) {
    public PlannedGrit {
        GritStage.passes(passes);
    }
}
