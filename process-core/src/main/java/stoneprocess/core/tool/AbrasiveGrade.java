package stoneprocess.core.tool;

import java.util.Comparator;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;

/**
 * One grade of diamond tool. Floor-pad numbers follow no single standard, so the number is an ordered label within one
 * sequence and the grain size is an interval over the standards in use.
 *
 * @param bond what holds the diamonds
 * @param number the grit number, 1 to 30000; a higher number is finer
 * @param grain interval of median grain sizes
 */
public record AbrasiveGrade(Bond bond, int number, Range<Length> grain) {
    /** The order of the work: metal, transition, resin, and within a bond coarse to fine. */
    public static final Comparator<AbrasiveGrade> IN_ORDER =
            Comparator.comparing(AbrasiveGrade::bond).thenComparingInt(AbrasiveGrade::number);

    public AbrasiveGrade {
        Refuse.nulls(AbrasiveGrade.class, bond, grain);
        Grit.requireNumber(number);
    }

    /** Its name without the grain. */
    public Grit grit() {
        return new Grit(bond, number);
    }

    /** Stable key, for example {@code resin-800}. */
    public String key() {
        return grit().key();
    }
}
