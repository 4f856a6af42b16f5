package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * One step over the whole area.
 *
 * @param name what the step is called; once in a job
 * @param kind what cuts
 * @param depth what the step takes off; zero for powder
 * @param machine the machine
 * @param passes traverses of a bay, 1 to 1000; elsewhere than on high spots they may be fewer
 * @param water litres a square metre for one pass; zero at the upper end means a dry step
 * @param edges passes of the hand tool along the edges, 1 to 1000; empty where they are not worked at this step
 * @param highSpots where all passes are needed; empty for everywhere
 */
public record JobStep(
        String name,
        StepKind kind,
        Range<Length> depth,
        FloorMachine machine,
        Range<Integer> passes,
        Range<Coverage> water,
        Optional<Range<Integer>> edges,
        Optional<HighSpots> highSpots) {
    private static final int MOST_PASSES = 1000;

    public JobStep {
        Refuse.nulls(JobStep.class, name, kind, depth, machine, passes, water, edges, highSpots);
        Require.text("step.name", name);
        requirePasses(name + ".passes", passes);
        edges.ifPresent(along -> requirePasses(name + ".edges", along));
    }

    static void requirePasses(String field, Range<Integer> passes) {
        if (passes.low() < 1) {
            throw new InvalidInputException(field, Integer.toString(passes.low()), "1 pass or more");
        }
        if (passes.high() > MOST_PASSES) {
            throw new InvalidInputException(field, Integer.toString(passes.high()), MOST_PASSES + " passes or fewer");
        }
    }

    /** A step with a diamond grade, as many passes along the edges, named after the grade's key. */
    public static JobStep of(
            AbrasiveGrade grade,
            Range<Length> depth,
            FloorMachine machine,
            Range<Integer> passes,
            Range<Coverage> water) {
        return new JobStep(
                grade.key(),
                StepKind.of(grade.bond()),
                depth,
                machine,
                passes,
                water,
                Optional.of(passes),
                Optional.empty());
    }

    /** A step with polishing powder, as many passes along the edges, named {@code powder}. */
    public static JobStep powder(FloorMachine machine, Range<Integer> passes, Range<Coverage> water) {
        Length none = new Length(0);
        return new JobStep(
                StepKind.POWDER.key(),
                StepKind.POWDER,
                Range.of(none, none),
                machine,
                passes,
                water,
                Optional.of(passes),
                Optional.empty());
    }

    /** The same step with other passes in the open field. */
    public JobStep withPasses(Range<Integer> other) {
        return new JobStep(name, kind, depth, machine, other, water, edges, highSpots);
    }

    /** The same step with another machine. */
    public JobStep withMachine(FloorMachine other) {
        return new JobStep(name, kind, depth, other, passes, water, edges, highSpots);
    }

    /** The same step with other passes along the edges; empty for the open field only. */
    public JobStep withEdges(Optional<Range<Integer>> other) {
        return new JobStep(name, kind, depth, machine, passes, water, other, highSpots);
    }

    /** The same step with fewer passes elsewhere than on high spots; empty for all passes everywhere. */
    public JobStep withHighSpots(Optional<HighSpots> other) {
        return new JobStep(name, kind, depth, machine, passes, water, edges, other);
    }

    /** Passes on average over the floor. */
    double passes(Case which) {
        double proud = which.ofWhole(passes);
        return highSpots
                .map(spots -> spots.mean(proud, which.ofWhole(spots.passes())))
                .orElse(proud);
    }

    /** Millimetres on average over the floor. */
    double depth(Case which) {
        double proud = which.of(depth);
        return highSpots
                .map(spots -> spots.mean(proud, which.of(spots.depth())))
                .orElse(proud);
    }

    /** Whether water is on the floor. */
    public boolean wet() {
        return water.high().kept() > 0;
    }
}
