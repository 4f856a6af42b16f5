package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/** Fixed jobs for tests. */
final class Jobs {
    static final Parameters STANDARD = Parameters.standard();
    static final FloorMachine SINGLE_DISC = FloorMachine.usual(MachineClass.SINGLE_DISC, STANDARD);
    static final FloorMachine PLANETARY = FloorMachine.usual(MachineClass.PLANETARY, STANDARD);
    static final JobStep METAL_100 = step(Bond.METAL, 100, SINGLE_DISC);
    static final JobStep RESIN_100 = step(Bond.RESIN, 100, SINGLE_DISC);
    static final JobStep RESIN_200 = step(Bond.RESIN, 200, SINGLE_DISC);
    static final JobStep RESIN_400 = step(Bond.RESIN, 400, SINGLE_DISC);
    static final JobStep RESIN_800 = step(Bond.RESIN, 800, SINGLE_DISC);

    private Jobs() {}

    /** Three to twelve passes for metal, six to twelve for the rest; water of the bond's usual range. */
    static JobStep step(Bond bond, int number, FloorMachine machine) {
        AbrasiveGrade grade = GritSequence.standard().nearest(bond, number).orElseThrow();
        boolean metal = bond == Bond.METAL;
        return JobStep.of(
                grade,
                Range.of(new Length(0.02), new Length(0.04)),
                machine,
                metal ? Range.of(3, 12) : Range.of(6, 12),
                STANDARD.range(metal ? "coverage.metal" : "coverage.resin-coarse", Coverage.class));
    }

    static Job marble(JobStep... steps) {
        return Job.of(
                new Area(50), new Length(28_000), CuttingClass.MEDIUM, List.of(steps), SiteConditions.usual(STANDARD));
    }
}
