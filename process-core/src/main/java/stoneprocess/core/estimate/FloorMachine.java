package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.tool.MachineClass;

/**
 * A machine as it is walked over the floor. What it removes in a pass is in the passes of a step already.
 *
 * @param kind class of machine
 * @param path width that one walk covers, above zero
 * @param power rated electric power, zero or more
 */
public record FloorMachine(MachineClass kind, Length path, Power power) {
    public FloorMachine {
        Refuse.nulls(FloorMachine.class, kind, path, power);
        Require.positive("machine.path", path);
    }

    /**
     * A usual single disc or planetary machine, by the parameters {@code machine.*}. Common practice, low confidence.
     *
     * @throws InvalidInputException for another class, whose figures have to be given
     */
    public static FloorMachine usual(MachineClass kind, Parameters parameters) {
        if (kind != MachineClass.SINGLE_DISC && kind != MachineClass.PLANETARY) {
            throw new InvalidInputException(
                    "machine.kind", kind.key(), "single-disc or planetary; give the figures of other machines");
        }
        String name = "machine." + kind.key() + ".";
        return new FloorMachine(
                kind, parameters.get(name + "path", Length.class), parameters.get(name + "power", Power.class));
    }
}
