package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;

/**
 * The slip potential that a measured value stands for.
 *
 * @param measured the value as it was measured on the floor, wet
 * @param potential its class
 * @param limit where low slip potential starts
 * @param cautions what the class holds for
 * @param <Q> what was measured
 */
public record SlipClass<Q extends Quantity>(
        Q measured, SlipPotential potential, Limit<Q> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public SlipClass {
        Refuse.nulls(SlipClass.class, measured, potential, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
