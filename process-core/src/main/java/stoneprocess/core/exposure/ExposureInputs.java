package stoneprocess.core.exposure;

import java.util.List;

/**
 * What is to be held against its limits on one site.
 *
 * @param inputs one thing each, in the order of the answers
 */
public record ExposureInputs(List<ExposureInput> inputs) {
    /** The version of the JSON form. */
    public static final String FORMAT = "exposure/1";

    /** Copies the list. */
    public ExposureInputs {
        inputs = List.copyOf(inputs);
    }
}
