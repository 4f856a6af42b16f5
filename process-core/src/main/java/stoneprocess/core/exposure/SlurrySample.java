package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Acidity;

/**
 * Slurry water whose acidity was measured.
 *
 * @param ph measured pH, from 0 to 14 pH
 */
public record SlurrySample(Acidity ph) implements ExposureInput {
    /**
     * Checks the range.
     *
     * @throws InvalidInputException above 14 pH
     */
    public SlurrySample {
        Refuse.nulls(SlurrySample.class, ph);
        Slurry.requireScale(ph);
    }
}
