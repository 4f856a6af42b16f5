package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * One way to do a job.
 *
 * @param name what the owner calls it
 * @param job the job done that way
 * @param timings the crew's own rates for it
 */
public record Alternative(String name, Job job, List<CrewTiming> timings) {
    public Alternative {
        Refuse.nulls(Alternative.class, name, job, timings);
        Require.text("option.name", name);
        timings = List.copyOf(timings);
    }

    /** By the defaults alone. */
    public static Alternative of(String name, Job job) {
        return new Alternative(name, job, List.of());
    }

    /** With those of the crew's rates that are of its steps. */
    public static Alternative withTimingsOfItsSteps(String name, Job job, List<CrewTiming> timings) {
        return new Alternative(
                name,
                job,
                timings.stream()
                        .filter(timing -> job.steps().stream()
                                .anyMatch(step -> step.name().equals(timing.step())))
                        .toList());
    }
}
