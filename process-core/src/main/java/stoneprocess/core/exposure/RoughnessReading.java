package stoneprocess.core.exposure;

import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;

/**
 * Slip judged by roughness.
 *
 * @param rz mean peak-to-valley height by stylus, from 0 to 1 mm
 */
public record RoughnessReading(Length rz) implements ExposureInput {
    /**
     * Checks the range.
     *
     * @throws InvalidInputException above 1 mm
     */
    public RoughnessReading {
        WetSlip.requireRoughness(rz);
    }
}
