package stoneprocess.core.estimate;

import java.util.List;

/**
 * A crew's own times, kept from job to job.
 *
 * @param times what it timed, step by step
 */
public record CrewTimes(List<CrewTiming> times) {
    /** The version of the JSON form. */
    public static final String FORMAT = "crew-times/1";

    /** Copies the list. */
    public CrewTimes {
        times = List.copyOf(times);
    }
}
