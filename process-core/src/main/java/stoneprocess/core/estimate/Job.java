package stoneprocess.core.estimate;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.removal.CuttingClass;

/**
 * What is to be done on one floor of one kind.
 *
 * @param area area worked, above zero
 * @param edges length of walls, plinths and fittings along which a hand tool is needed; a range where nobody measured it
 * @param stone how the stone gives way
 * @param steps the steps in order, each name once; none where all the cutting is other work by hand
 * @param others work besides the steps, each after a step of this job or before the first
 * @param testArea whether the work is proven on a test area first
 * @param sealing sealing at the end, if any
 * @param site how the site lets the crew work
 */
public record Job(
        Area area,
        Range<Length> edges,
        CuttingClass stone,
        List<JobStep> steps,
        List<OtherWork> others,
        boolean testArea,
        Optional<Sealing> sealing,
        SiteConditions site) {
    public Job {
        Refuse.nulls(Job.class, area, edges, stone, steps, others, sealing, site);
        Require.positive("job.area", area);
        steps = List.copyOf(steps);
        others = List.copyOf(others);
        if (steps.isEmpty() && others.isEmpty()) {
            throw new InvalidInputException("job.steps", "none", "at least one step or other work");
        }
        Set<String> names = new HashSet<>();
        for (JobStep step : steps) {
            requireNew("job.steps", names, step.name());
        }
        Set<String> otherNames = new HashSet<>();
        List<String> followed = Stream.concat(
                        Stream.concat(names.stream().sorted(), Stream.of(OtherWork.TEST_AREA)),
                        sealing.stream().map(last -> OtherWork.SEALING))
                .toList();
        for (OtherWork other : others) {
            requireNew("job.others", otherNames, other.name());
            other.after().ifPresent(after -> {
                if (!followed.contains(after)) {
                    throw new InvalidInputException("job.others.after", after, "one of " + String.join(", ", followed));
                }
            });
        }
    }

    private static void requireNew(String field, Set<String> names, String name) {
        if (!names.add(name)) {
            throw new InvalidInputException(field, name, "each name once");
        }
    }

    /**
     * How much of the usual time work takes that does not go by area or length: all of it from {@code floor-size.middle}
     * on, less in proportion on smaller floors, never less than {@code estimate.small}. Common practice.
     */
    public static Share ofUsual(Area area, Parameters parameters) {
        double part = area.squareMetres()
                / parameters.get("floor-size.middle", Area.class).squareMetres();
        return new Share(100 * Math.max(parameters.part("estimate.small"), Math.min(1, part)));
    }

    /**
     * The area by which hours are reckoned for work that wider tools do on large floors: what lies beyond {@code
     * estimate.wide-floor} goes at {@code estimate.wide-rate} of the usual rate, 100 % or more. Common practice.
     */
    public static Area withWideTools(Area area, Parameters parameters) {
        double usual = parameters.get("estimate.wide-floor", Area.class).squareMetres();
        double faster = parameters.part("estimate.wide-rate");
        if (faster < 1) {
            throw new InvalidInputException("estimate.wide-rate", 100 * faster + " %", "100 % or more");
        }
        double beyond = Math.max(0, area.squareMetres() - usual);
        return new Area(Math.min(area.squareMetres(), usual) + beyond / faster);
    }

    /** A job of steps alone, proven on a test area, without sealing. */
    public static Job of(Area area, Length edges, CuttingClass stone, List<JobStep> steps, SiteConditions site) {
        return new Job(area, Range.of(edges, edges), stone, steps, List.of(), true, Optional.empty(), site);
    }

    /** The same job on another area. */
    public Job withArea(Area other) {
        return new Job(other, edges, stone, steps, others, testArea, sealing, site);
    }

    /** The same job with other steps. */
    public Job withSteps(List<JobStep> other) {
        return new Job(area, edges, stone, other, others, testArea, sealing, site);
    }

    /** The same job with other work besides the steps. */
    public Job withOthers(List<OtherWork> other) {
        return new Job(area, edges, stone, steps, other, testArea, sealing, site);
    }

    /** The same job, sealed at the end. */
    public Job withSealing(Sealing other) {
        return new Job(area, edges, stone, steps, others, testArea, Optional.of(other), site);
    }

    /** The same job with other steps and other work, without sealing; without steps it has no edges. */
    public Job withoutSealing(List<JobStep> otherSteps, List<OtherWork> otherWork) {
        return new Job(
                area,
                otherSteps.isEmpty() ? Range.of(new Length(0), new Length(0)) : edges,
                stone,
                otherSteps,
                otherWork,
                testArea,
                Optional.empty(),
                site);
    }

    /** The same job without a test area, as for repairs that are their own sample. */
    public Job withoutTestArea() {
        return new Job(area, edges, stone, steps, others, false, sealing, site);
    }

    /** The same job on another site. */
    public Job withSite(SiteConditions other) {
        return new Job(area, edges, stone, steps, others, testArea, sealing, other);
    }

    /** The same job on another stone. */
    public Job withStone(CuttingClass other) {
        return new Job(area, edges, other, steps, others, testArea, sealing, site);
    }
}
