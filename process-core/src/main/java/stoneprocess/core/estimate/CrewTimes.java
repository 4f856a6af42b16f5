package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

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
        Refuse.nulls(CrewTimes.class, times);
        times = List.copyOf(times);
    }
}
