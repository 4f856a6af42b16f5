package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Angle;

/**
 * A ramp test.
 *
 * @param measured mean angle at which the walkers slip
 * @param ramp its class
 * @param limit where the lowest class starts
 * @param cautions what the class holds for
 */
public record RampResult(Angle measured, RampClass ramp, Limit<Angle> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public RampResult {
        Refuse.nulls(RampResult.class, measured, ramp, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
