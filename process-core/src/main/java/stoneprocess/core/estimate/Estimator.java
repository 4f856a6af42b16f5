package stoneprocess.core.estimate;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Estimates jobs with one set of parameters. The defaults are common practice of low confidence; a crew's own timings
 * are the better base. Immutable and safe to share between threads.
 */
public final class Estimator {
    private final Parameters parameters;
    private final Productivity productivity;

    /** With the given numbers; those of this room are called {@code estimate.*}. */
    public Estimator(Parameters parameters) {
        this.parameters = parameters;
        this.productivity = new Productivity(parameters);
    }

    /** The estimate by the defaults alone. */
    public Estimate estimate(Job job) {
        return estimate(job, List.of());
    }

    /**
     * Hours, calendar and consumables of a job. Work lines follow one another; two people are at work on a wet step.
     * Open field: area over rate. Edges: length over rate at each step. Rinsing, setting up and rework: shares of
     * these. Low takes every low figure, high every high one, likely the middle of every range.
     *
     * @param job what is to be done
     * @param timings the crew's own rates; each replaces the default of its step, and the line says so
     * @throws InvalidInputException for a timing of a step that the job does not have or that is timed twice, and when a
     *     parameter was retuned to what makes no sense
     */
    public Estimate estimate(Job job, List<CrewTiming> timings) {
        requireSteps(job, timings);
        List<Line> lines = Hours.of(job, timings, parameters);
        List<RouteCheck> routes = job.steps().stream()
                .map(step -> productivity.check(step, job.stone()))
                .toList();
        return new Estimate(
                job,
                lines,
                Calendar.of(lines, job.site().shift()),
                Consumption.of(job, lines, parameters),
                routes,
                remarks(job, routes, lines, byDefault(job, timings)));
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

    /** The steps whose open field was not timed. */
    private static List<JobStep> byDefault(Job job, List<CrewTiming> timings) {
        Set<String> timed = timings.stream()
                .filter(timing -> timing.field().isPresent())
                .map(CrewTiming::step)
                .collect(Collectors.toSet());
        return job.steps().stream().filter(step -> !timed.contains(step.name())).toList();
    }

    private Set<Remark> remarks(Job job, List<RouteCheck> routes, List<Line> lines, List<JobStep> byDefault) {
        EnumSet<Remark> remarks = EnumSet.of(Remark.ENDS_ARE_ADDED, Remark.EVERY_DAY_IS_A_WORKING_DAY);
        if (job.stone().resistance().purchaseMinimum()
                && byDefault.stream().anyMatch(step -> step.cutRate().isEmpty())) {
            remarks.add(Remark.ABRASION_RESISTANCE_IS_A_PURCHASE_MINIMUM);
        }
        if (lines.stream()
                .anyMatch(line -> line instanceof Line.WorkLine work
                        && work.work() == Work.EDGES
                        && work.basis() == Basis.DEFAULT)) {
            remarks.add(Remark.EDGES_ARE_NOT_SCALED);
        }
        if (byDefault.stream().anyMatch(step -> productivity.capped(step, job.stone()))) {
            remarks.add(Remark.WALKING_SPEED_IS_CAPPED);
        }
        Set<String> walked = byDefault.stream().map(JobStep::name).collect(Collectors.toSet());
        if (routes.stream()
                .anyMatch(check ->
                        walked.contains(check.step()) && check.agreement() == RouteCheck.Agreement.NOT_EXPLAINED)) {
            remarks.add(Remark.ROUTES_DISAGREE);
        }
        return remarks;
    }
}
