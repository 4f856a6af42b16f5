package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;

/**
 * Slip measured on the shod ramp.
 *
 * @param angle mean angle of slip on oil, from 0 to 45 degrees
 */
public record RampReading(Angle angle) implements ExposureInput {
    /**
     * Checks the range.
     *
     * @throws InvalidInputException above 45 degrees
     */
    public RampReading {
        Refuse.nulls(RampReading.class, angle);
        WetSlip.requireRamp(angle);
    }
}
