package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * One step over the whole area.
 *
 * @param name what the step is called; once in a job
 * @param kind what cuts
 * @param grain grain sizes of the grade; empty for powder
 * @param machine the machine with its weight
 * @param passes traverses of a bay, 1 to 1000
 * @param water litres a square metre for one pass; zero at the upper end means a dry step
 * @param cutRate how fast the tool cuts compared with a usual tool of its kind on marble, 1 to 1000 %, as timed by
 *     the crew; empty when it follows from load, speed and abrasion resistance
 * @param edges whether the edges are worked at this step too
 */
public record JobStep(
        String name,
        StepKind kind,
        Optional<Range<Length>> grain,
        FloorMachine machine,
        Range<Integer> passes,
        Range<Coverage> water,
        Optional<Share> cutRate,
        boolean edges) {
    private static final int MOST_PASSES = 1000;

    public JobStep {
        Refuse.nulls(JobStep.class, name, kind, grain, machine, passes, water, cutRate);
        Require.text("step.name", name);
        if (passes.low() < 1) {
            throw new InvalidInputException(name + ".passes", Integer.toString(passes.low()), "1 pass or more");
        }
        if (passes.high() > MOST_PASSES) {
            throw new InvalidInputException(
                    name + ".passes", Integer.toString(passes.high()), MOST_PASSES + " passes or fewer");
        }
        cutRate.filter(share -> share.percent() < 1 || share.percent() > 1000).ifPresent(share -> {
            throw new InvalidInputException(name + ".cut-rate", share.print(), "from 1 to 1000 %");
        });
    }

    /** A step with a diamond grade, edges included, named after the grade's key. */
    public static JobStep of(AbrasiveGrade grade, FloorMachine machine, Range<Integer> passes, Range<Coverage> water) {
        return new JobStep(
                grade.key(),
                StepKind.of(grade.bond()),
                Optional.of(grade.grain()),
                machine,
                passes,
                water,
                Optional.empty(),
                true);
    }

    /** A step with polishing powder, edges included, named {@code powder}. */
    public static JobStep powder(FloorMachine machine, Range<Integer> passes, Range<Coverage> water) {
        return new JobStep(
                StepKind.POWDER.key(),
                StepKind.POWDER,
                Optional.empty(),
                machine,
                passes,
                water,
                Optional.empty(),
                true);
    }

    /** The same step with the crew's own cut rate. */
    public JobStep withCutRate(Share rate) {
        return new JobStep(name, kind, grain, machine, passes, water, Optional.of(rate), edges);
    }

    /** The same step with other passes. */
    public JobStep withPasses(Range<Integer> other) {
        return new JobStep(name, kind, grain, machine, other, water, cutRate, edges);
    }

    /** The same step with another machine. */
    public JobStep withMachine(FloorMachine other) {
        return new JobStep(name, kind, grain, other, passes, water, cutRate, edges);
    }

    /** The same step in the open field only. */
    public JobStep withoutEdges() {
        return new JobStep(name, kind, grain, machine, passes, water, cutRate, false);
    }

    /** Whether water is on the floor. */
    public boolean wet() {
        return water.high().kept() > 0;
    }
}
