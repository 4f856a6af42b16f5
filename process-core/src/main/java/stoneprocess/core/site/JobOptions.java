package stoneprocess.core.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;

/**
 * What a plan does not know about a job.
 *
 * @param edges length of walls, plinths and fittings along which a hand tool is needed; empty for that of the survey
 * @param night share of the work at night rates; empty for what the survey's hours of work say
 * @param worked when the site is worked; empty for the survey's shift at the usual times
 * @param times hours of one technician in place of the usual ones, by a name of {@link PlannedJob#takesHours}; kept in
 *     the order given
 */
public record JobOptions(
        Optional<Length> edges,
        Optional<Share> night,
        Optional<WorkingTimes> worked,
        Map<String, Range<TimeSpan>> times) {
    public JobOptions {
        Refuse.nulls(JobOptions.class, edges, night, worked, times);
        edges.filter(length -> length.millimetres() == 0).ifPresent(length -> {
            throw new InvalidInputException("edges", length.print(), "more than zero");
        });
        times = Collections.unmodifiableMap(new LinkedHashMap<>(times));
    }

    /** Nothing is known besides the plan. */
    public static JobOptions defaults() {
        return new JobOptions(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    }

    /** The same with a length of the edges, above zero. */
    public JobOptions withEdges(Length length) {
        return new JobOptions(Optional.of(length), night, worked, times);
    }

    /** The same with a share of the work at night rates. */
    public JobOptions withNight(Share share) {
        return new JobOptions(edges, Optional.of(share), worked, times);
    }

    /** The same with times at which the site is worked. */
    public JobOptions withWorked(WorkingTimes other) {
        return new JobOptions(edges, night, Optional.of(other), times);
    }

    /** The same with hours of one technician for named work, for example {@code fill-cracks}. */
    public JobOptions withTime(String work, Range<TimeSpan> hours) {
        Map<String, Range<TimeSpan>> changed = new LinkedHashMap<>(times);
        changed.put(work, hours);
        return new JobOptions(edges, night, worked, changed);
    }

    /** The same with the hours of the named work alone. */
    public JobOptions withTimesOf(Set<String> work) {
        Map<String, Range<TimeSpan>> kept = new LinkedHashMap<>(times);
        kept.keySet().retainAll(work);
        return new JobOptions(edges, night, worked, kept);
    }
}
