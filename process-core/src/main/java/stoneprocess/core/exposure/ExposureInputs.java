package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * The exposures of one site that are to be compared with their limits.
 *
 * @param inputs the exposures, in the order in which they are answered
 */
public record ExposureInputs(List<ExposureInput> inputs) {
    /** The version of the JSON form. */
    public static final String FORMAT = "exposure/1";

    public ExposureInputs {
        Refuse.nulls(ExposureInputs.class, inputs);
        inputs = List.copyOf(inputs);
    }
}
