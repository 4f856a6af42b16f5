package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Sealing after the last step.
 *
 * @param drying wait before the sealer, in hours of the clock
 * @param curing wait after it before the floor is used
 */
public record Sealing(Range<TimeSpan> drying, Range<TimeSpan> curing) {
    public Sealing {
        Refuse.nulls(Sealing.class, drying, curing);
    }

    /** The waits of {@code sealing.wait} and {@code sealing.cure}. Common practice. */
    public static Sealing usual(Parameters parameters) {
        return new Sealing(
                parameters.range("sealing.wait", TimeSpan.class), parameters.range("sealing.cure", TimeSpan.class));
    }
}
