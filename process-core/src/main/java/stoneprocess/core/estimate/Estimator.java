package stoneprocess.core.estimate;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Estimates jobs with one set of parameters. The defaults are common practice of low confidence; a crew's own timings
 * are the better base. Immutable and safe to share between threads.
 */
public final class Estimator {
    private final Parameters parameters;

    /** With the given numbers; those of this room are called {@code estimate.*}. */
    public Estimator(Parameters parameters) {
        this.parameters = parameters;
    }

    /** The estimate by the defaults alone. */
    public Estimate estimate(Job job) {
        return estimate(job, List.of());
    }

    /**
     * Hours, calendar and consumables of a job. Work lines follow one another. Everybody on the site is paid while it is
     * worked: one runs the machine, the others do the edges and the slurry beside it; masking, sealing and other work of one
     * technician are shared. Open field: area over the rate at which the machine is walked, all passes, or over the
     * rate of powder. Edges: length times passes over the speed of the hand tool. Setting up: once a grit and once a bay.
     * Rinsing: by the area at each grit. Rework: a share of both. Low takes every low figure, high every high one, likely the middle of
     * every range.
     *
     * @param job what is to be done
     * @param timings the crew's own rates; each replaces the default of its step, and the line says so
     * @throws InvalidInputException for a timing of a step that the job does not have or that is timed twice, and when a
     *     parameter was retuned to what makes no sense
     */
    public Estimate estimate(Job job, List<CrewTiming> timings) {
        requireSteps(job, timings);
        List<Line> lines = Hours.of(job, timings, parameters);
        Spread<TimeSpan> daily = Hours.daily(job, new Numbers(parameters));
        return new Estimate(
                job,
                lines,
                Calendar.of(lines, job.site().times(), daily, parameters.get("estimate.away", TimeSpan.class)),
                paid(job.site(), lines, daily),
                Consumption.of(job, lines, parameters),
                Plausibility.of(job, lines, parameters),
                EnumSet.allOf(Remark.class));
    }

    private Spread<TimeSpan> paid(SiteConditions site, List<Line> lines, Spread<TimeSpan> daily) {
        double least =
                parameters.part("estimate.least-attendance") * site.shift().minutes();
        Spread<TimeSpan> worked = Estimate.personHours(lines);
        double[] paid = Stream.of(Case.values())
                .mapToDouble(which -> worked.at(which).minutes()
                        + site.people() * Calendar.missing(lines, site.times(), daily, least, which))
                .toArray();
        double likely = Math.max(paid[0], paid[1]);
        return Spread.of(new TimeSpan(paid[0]), new TimeSpan(likely), new TimeSpan(Math.max(likely, paid[2])));
    }

    /** The likely person-hours of a job by the defaults alone, as {@link #estimate} tells them. */
    public TimeSpan likelyHours(Job job) {
        return new TimeSpan(Hours.of(job, List.of(), parameters).stream()
                .filter(Line.WorkLine.class::isInstance)
                .mapToDouble(
                        line -> ((Line.WorkLine) line).personHours().likely().minutes())
                .sum());
    }

    /**
     * The person-hours of a visit of one person without machines, with loading as for a small floor.
     *
     * @param parameter the range of its hours
     * @param grits shown on a test area, 0 or more, each for the time of {@code estimate.test-grit}
     * @param distance one way to the site; empty where nobody told it
     */
    public Spread<TimeSpan> visit(String parameter, int grits, Optional<Length> distance) {
        Numbers numbers = new Numbers(parameters);
        return Case.spread(
                which -> numbers.at(parameter, which)
                        + grits * numbers.at("estimate.test-grit", which)
                        + numbers.share("estimate.small") * numbers.at("estimate.mobilisation", which)
                        + distance.map(way -> Hours.road(way, numbers, which)).orElse(0.0),
                TimeSpan::new);
    }

    private static void requireSteps(Job job, List<CrewTiming> timings) {
        List<String> names = job.steps().stream().map(JobStep::name).toList();
        Set<String> timed = new HashSet<>();
        for (CrewTiming timing : timings) {
            if (!names.contains(timing.step())) {
                throw new InvalidInputException(
                        "timing.step", timing.step(), "a step of the job: " + String.join(", ", names));
            }
            if (!timed.add(timing.step())) {
                throw new InvalidInputException("timing.step", timing.step(), "each step timed once");
            }
        }
    }
}
