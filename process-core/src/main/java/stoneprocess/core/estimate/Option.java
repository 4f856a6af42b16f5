package stoneprocess.core.estimate;

import java.util.List;

/**
 * One way to do a job.
 *
 * @param name what the owner calls it
 * @param job the job done that way
 * @param timings the crew's own rates for it
 */
public record Option(String name, Job job, List<CrewTiming> timings) {
    public Option {
        Require.text("option.name", name);
        timings = List.copyOf(timings);
    }

    /** By the defaults alone. */
    public static Option of(String name, Job job) {
        return new Option(name, job, List.of());
    }
}
