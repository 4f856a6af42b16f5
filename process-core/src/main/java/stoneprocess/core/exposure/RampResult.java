package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Angle;

/**
 * The result of a ramp test.
 *
 * @param measured mean angle at which the walkers slip
 * @param ramp class of that angle
 * @param limit where the lowest class starts
 * @param cautions how far the class holds
 */
public record RampResult(Angle measured, RampClass ramp, Limit<Angle> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public RampResult {
        Refuse.nulls(RampResult.class, measured, ramp, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
