package stoneprocess.rules.feature;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.term.Term;

/**
 * A fact with the classes that it may be. One class means known; every class of the enum means that nobody knows.
 *
 * <p>A rule that restrains, demands care or warns matches what <em>may be</em>: {@code mayBe contains X}. A rule that
 * makes the outcome bolder matches what <em>is</em>: {@code known == X}.
 *
 * @param <E> the classes
 */
public interface Feature<E extends Enum<E> & Term> {
    /** The classes that are possible; never empty. */
    Set<E> mayBe();

    /** The only possible class; null when there are several. */
    default @Nullable E known() {
        return mayBe().size() == 1 ? mayBe().iterator().next() : null;
    }
}
