package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * What is to be held against its limits on one site.
 *
 * @param inputs one thing each, in the order of the answers
 */
public record ExposureInputs(List<ExposureInput> inputs) {
    /** The version of the JSON form. */
    public static final String FORMAT = "exposure/1";

    public ExposureInputs {
        Refuse.nulls(ExposureInputs.class, inputs);
        inputs = List.copyOf(inputs);
    }
}
