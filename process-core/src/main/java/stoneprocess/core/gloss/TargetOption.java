package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;

/**
 * A way to a target.
 *
 * @param grit the grit at whose end it is judged
 * @param passes passes of that grit by then
 * @param probability how likely the mean of the zone is at the target or over it, in percent
 */
public record TargetOption(int grit, int passes, Share probability) {
    public TargetOption {
        Refuse.nulls(TargetOption.class, probability);
    }
}
