package stoneprocess.core.tool;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;

/**
 * What a class of machine is like.
 *
 * @param machine the class
 * @param speed speed of the disc or head
 * @param mass mass of the machine without added weight
 * @param source where the figures come from
 */
public record Machine(MachineClass machine, Range<Rotation> speed, Range<Mass> mass, Citation source) {
    private static final Map<MachineClass, Machine> ALL = load();

    public Machine {
        Refuse.nulls(Machine.class, machine, speed, mass, source);
    }

    /** What the machines of a class are like. */
    public static Machine of(MachineClass machine) {
        return ALL.get(Objects.requireNonNull(machine, "machine"));
    }

    private static Map<MachineClass, Machine> load() {
        Map<MachineClass, Machine> all = new EnumMap<>(MachineClass.class);
        for (Tsv.Row row : Tsv.read(Machine.class, "machines.tsv")) {
            MachineClass machine = Term.parse(MachineClass.class, row.get("machine"), "machine");
            all.put(
                    machine,
                    new Machine(
                            machine,
                            Range.of(
                                    Rotation.of(row.number("rpm_low"), Unit.REVOLUTION_PER_MINUTE),
                                    Rotation.of(row.number("rpm_high"), Unit.REVOLUTION_PER_MINUTE)),
                            Range.of(
                                    Mass.of(row.number("mass_low_kg"), Unit.KILOGRAM),
                                    Mass.of(row.number("mass_high_kg"), Unit.KILOGRAM)),
                            Sources.standard().get(row.get("source"))));
        }
        for (MachineClass machine : MachineClass.values()) {
            if (!all.containsKey(machine)) {
                throw new IllegalStateException("machines.tsv has no line for " + machine.key());
            }
        }
        return all;
    }
}
