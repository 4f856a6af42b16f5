package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * What the mean of a zone will read at 60 degrees. Single readings scatter about it.
 *
 * @param grit the grit at whose end it holds
 * @param passes passes of that grit by then
 * @param median as likely under as over it
 * @param interval where it lies with the probability {@code level}, at equal chances of lying under and over
 * @param level probability of the interval
 * @param basis what it rests on
 */
public record GlossPrediction(
        int grit, int passes, Gloss median, Range<Gloss> interval, Share level, ForecastBasis basis) {
    public GlossPrediction {
        Refuse.nulls(GlossPrediction.class, median, interval, level, basis);
    }
}
