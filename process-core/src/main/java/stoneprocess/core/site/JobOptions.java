package stoneprocess.core.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;

/**
 * What a plan does not know about a job.
 *
 * @param edges length of walls, plinths and fittings along which a hand tool is needed; empty for unknown
 * @param site how the site lets the crew work; empty for {@link SiteConditions#usual}
 * @param times hours of one technician in place of the usual ones, by a name of {@link PlannedJob#takesHours}; kept in
 *     the order given
 */
public record JobOptions(Optional<Length> edges, Optional<SiteConditions> site, Map<String, Range<TimeSpan>> times) {
    public JobOptions {
        Refuse.nulls(JobOptions.class, edges, site, times);
        edges.filter(length -> length.millimetres() == 0).ifPresent(length -> {
            throw new InvalidInputException("edges", length.print(), "more than zero");
        });
        times = Collections.unmodifiableMap(new LinkedHashMap<>(times));
    }

    /** Nothing is known besides the plan. */
    public static JobOptions defaults() {
        return new JobOptions(Optional.empty(), Optional.empty(), Map.of());
    }

    /** The same with a length of the edges, above zero. */
    public JobOptions withEdges(Length length) {
        return new JobOptions(Optional.of(length), site, times);
    }

    /** The same with a site. */
    public JobOptions withSite(SiteConditions other) {
        return new JobOptions(edges, Optional.of(other), times);
    }

    /** The same with hours of one technician for named work, for example {@code fill-cracks}. */
    public JobOptions withTime(String work, Range<TimeSpan> hours) {
        Map<String, Range<TimeSpan>> changed = new LinkedHashMap<>(times);
        changed.put(work, hours);
        return new JobOptions(edges, site, changed);
    }

    /** The same with the hours of the named work alone. */
    public JobOptions withTimesOf(Set<String> work) {
        Map<String, Range<TimeSpan>> kept = new LinkedHashMap<>(times);
        kept.keySet().retainAll(work);
        return new JobOptions(edges, site, kept);
    }
}
