package stoneprocess.core.removal;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Machine;
import stoneprocess.core.tool.MachineClass;

/**
 * Stone that goes with each pass. A pass is one traverse of the bay at the walking speed of the estimate.
 *
 * <p>Depth of a pass = {@code removal.<bond>} x {@code removal.<bond>.number} / grit number x cut rate of the stone x
 * intensity of the machine. Preston (1927), dh/dt = k p v, as a ratio: what is under a wider path is pressed less. No k is
 * published for diamond on floor stone; all figures are from memory, of low confidence, and a dial gauge over a few passes
 * is the better base.
 *
 * @param stone how the stone gives way
 * @param parameters the numbers
 */
public record Removal(CuttingClass stone, Parameters parameters) {
    private static final double SURELY_WHOLE = 1e-9;
    private static final int MOST_PASSES = 1000;
    private static final String LEAST_PASSES = "removal.least-passes";

    public Removal {
        Refuse.nulls(Removal.class, stone, parameters);
    }

    /**
     * What a pass does beside one of the usual single disc with the middle of its usual weight, walked at the usual speed:
     * mass and added weight on each metre of the path, over the share of that speed at which the stone is walked. The hand
     * tool and machines that are not for cutting have a number of their own in place of the weight. That planetary heads
     * slide faster is left out: what the crews count does not show it.
     *
     * @param added the weight put on
     */
    public Share intensity(MachineClass machine, Mass added) {
        double walk = parameters.part(stone.walkParameter());
        if (!(walk > 0)) {
            throw new InvalidInputException(stone.walkParameter(), 100 * walk + " %", "more than zero");
        }
        return new Share(100 * load(machine, added) / walk);
    }

    private double load(MachineClass machine, Mass added) {
        return switch (machine) {
            case SINGLE_DISC, PLANETARY ->
                perMetre(machine, added.kilograms())
                        / perMetre(
                                MachineClass.SINGLE_DISC, middle(parameters.range("weight.single-disc", Mass.class)));
            case EDGE_TOOL -> parameters.part("removal.edge-tool");
            case BURNISHER, PROPANE_MACHINE, SCRUBBER -> parameters.part("removal.other");
        };
    }

    private double perMetre(MachineClass machine, double added) {
        double kilograms = middle(Machine.of(machine).mass()) + added;
        return kilograms / parameters.get(pathParameter(machine), Length.class).kept();
    }

    private static double middle(Range<Mass> range) {
        return (range.low().kilograms() + range.high().kilograms()) / 2;
    }

    private static String pathParameter(MachineClass machine) {
        return "machine." + machine.key() + ".path";
    }

    /** What a number of passes takes off, from worn pads to fresh ones. */
    public Range<Length> takes(int passes, AbrasiveGrade grade, MachineClass machine, Mass added) {
        return Range.of(
                new Length(passes * perPass(grade, machine, added, ".low")),
                new Length(passes * perPass(grade, machine, added, ".high")));
    }

    /** Millimetres. */
    private double perPass(AbrasiveGrade grade, MachineClass machine, Mass added, String end) {
        String bond = removalParameter(grade);
        Length usual = parameters.get(bond + end, Length.class);
        double depth = usual.kept()
                * parameters.get(bond + ".number", Count.class).number()
                / grade.number()
                * parameters.part(stone.rateParameter())
                * intensity(machine, added).percent()
                / 100;
        if (!(depth > 0)) {
            throw new InvalidInputException(bond + end, usual.print(), "a depth, cut rate and intensity above zero");
        }
        return depth;
    }

    /** How deep the scratches are that a grade leaves: a share of the middle of its grain. */
    public Length leaves(AbrasiveGrade grade) {
        double grain = (grade.grain().low().kept() + grade.grain().high().kept()) / 2;
        return new Length(grain * parameters.part(stone.reachParameter()));
    }

    /**
     * Passes that take off a depth: the least with fresh pads, the most with worn ones, under a floor machine not fewer than
     * {@code removal.least-passes}; 1 to 1000. A number of passes is a plan; the check after them decides.
     */
    public Range<Integer> passes(Range<Length> depth, AbrasiveGrade grade, MachineClass machine, Mass added) {
        int least = least(machine);
        return Range.of(
                passes(depth.low(), perPass(grade, machine, added, ".high"), least),
                passes(depth.high(), perPass(grade, machine, added, ".low"), least));
    }

    private static int passes(Length depth, double perPass, int least) {
        double passes = StrictMath.ceil(depth.kept() / perPass - SURELY_WHOLE);
        return (int) Math.min(MOST_PASSES, Math.max(least, passes));
    }

    /**
     * A hand tool works along an edge; a floor machine crosses its passes. They are counted at the usual speed: one at a third
     * of it takes as long as three.
     */
    private int least(MachineClass machine) {
        double crossed = parameters.get(LEAST_PASSES, Count.class).number() * parameters.part(stone.walkParameter());
        return machine == MachineClass.EDGE_TOOL ? 1 : (int) StrictMath.ceil(crossed - SURELY_WHOLE);
    }

    /** Names of the parameters behind the passes of a grade. */
    public List<String> inputs(AbrasiveGrade grade, MachineClass machine) {
        String bond = removalParameter(grade);
        List<String> load = switch (machine) {
            case SINGLE_DISC, PLANETARY -> List.of(pathParameter(machine), LEAST_PASSES);
            case EDGE_TOOL -> List.of("removal.edge-tool");
            case BURNISHER, PROPANE_MACHINE, SCRUBBER -> List.of("removal.other", LEAST_PASSES);
        };
        return Stream.concat(
                        Stream.of(
                                bond + ".low",
                                bond + ".high",
                                bond + ".number",
                                stone.rateParameter(),
                                stone.reachParameter(),
                                stone.walkParameter(),
                                "weight.single-disc.low",
                                "weight.single-disc.high"),
                        load.stream())
                .toList();
    }

    private static String removalParameter(AbrasiveGrade grade) {
        return "removal." + grade.bond().key();
    }
}
