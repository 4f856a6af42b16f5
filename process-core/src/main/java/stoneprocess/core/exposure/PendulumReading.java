package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.PendulumValue;

/**
 * Slip measured by pendulum.
 *
 * @param pendulum lowest mean of the directions tested, wet, from 0 to 150 PTV
 */
public record PendulumReading(PendulumValue pendulum) implements ExposureInput {
    /**
     * Checks the range.
     *
     * @throws InvalidInputException above 150 PTV
     */
    public PendulumReading {
        Refuse.nulls(PendulumReading.class, pendulum);
        WetSlip.requirePendulum(pendulum);
    }
}
