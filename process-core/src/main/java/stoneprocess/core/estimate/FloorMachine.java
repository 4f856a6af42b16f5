package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.tool.Machine;
import stoneprocess.core.tool.MachineClass;

/**
 * A machine as it stands on the floor.
 *
 * @param kind class of machine
 * @param path width that one walk covers, above zero
 * @param mass mass of the machine on the pads, without added weight, above zero
 * @param added added weight, zero or more
 * @param padArea area of all pads in contact, above zero
 * @param motion how the pads move
 * @param power rated electric power, zero or more
 */
public record FloorMachine(
        MachineClass kind, Length path, Mass mass, Mass added, Area padArea, Motion motion, Power power) {
    /** Standard acceleration of gravity, m/s2 (3rd General Conference on Weights and Measures, 1901). */
    private static final double GRAVITY = 9.80665;

    public FloorMachine {
        Refuse.nulls(FloorMachine.class, kind, path, mass, added, padArea, motion, power);
        Require.positive("machine.path", path);
        Require.positive("machine.mass", mass);
        Require.positive("machine.pad-area", padArea);
        Require.positive("machine.motion", motion.meanSlidingSpeed());
    }

    /**
     * A usual single disc or planetary machine: the middle of its class's mass, added weight and speed, and the
     * parameters {@code estimate.machine.*}. Common practice, low confidence.
     *
     * @throws InvalidInputException for another class, whose figures have to be given
     */
    public static FloorMachine usual(MachineClass kind, Parameters parameters) {
        if (kind != MachineClass.SINGLE_DISC && kind != MachineClass.PLANETARY) {
            throw new InvalidInputException(
                    "machine.kind", kind.key(), "single-disc or planetary; give the figures of other machines");
        }
        String name = "estimate.machine." + kind.key() + ".";
        Machine usual = Machine.of(kind);
        Rotation turns = new Rotation(middle(usual.speed()));
        Length inner = parameters.get(name + "inner", Length.class);
        Length outer = parameters.get(name + "outer", Length.class);
        Motion motion = kind == MachineClass.SINGLE_DISC
                ? new Motion.Disc(turns, inner, outer)
                : new Motion.Planetary(
                        turns,
                        parameters.get(name + "carrier", Rotation.class),
                        Motion.Turning.OPPOSITE_WAY,
                        inner,
                        outer,
                        parameters.get(name + "centres", Length.class));
        return new FloorMachine(
                kind,
                parameters.get(name + "path", Length.class),
                new Mass(middle(usual.mass())),
                new Mass(middle(parameters.range("weight." + kind.key(), Mass.class))),
                parameters.get(name + "pad-area", Area.class),
                motion,
                parameters.get(name + "power", Power.class));
    }

    private static double middle(Range<? extends Quantity> range) {
        return Case.LIKELY.of(range);
    }

    /** The same machine with other added weight. */
    public FloorMachine withAdded(Mass other) {
        return new FloorMachine(kind, path, mass, other, padArea, motion, power);
    }

    /**
     * Pressure and sliding speed of the pads. Pressure = (mass + added) 9.80665 / pad area, evenly spread; true pads
     * carry unevenly.
     */
    public Contact contact() {
        double kilonewtons = (mass.kilograms() + added.kilograms()) * GRAVITY / 1000;
        return new Contact(new AreaLoad(kilonewtons / padArea.squareMetres()), motion.meanSlidingSpeed());
    }
}
