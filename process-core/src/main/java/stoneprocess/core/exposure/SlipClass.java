package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;

/**
 * The slip potential of a measured value.
 *
 * @param measured the value measured on the wet floor
 * @param potential class of that value
 * @param limit where low slip potential starts
 * @param cautions how far the class holds
 * @param <Q> the quantity that was measured
 */
public record SlipClass<Q extends Quantity>(
        Q measured, SlipPotential potential, Limit<Q> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public SlipClass {
        Refuse.nulls(SlipClass.class, measured, potential, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
