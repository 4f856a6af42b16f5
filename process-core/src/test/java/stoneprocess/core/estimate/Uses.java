package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;

/** What the room computes with one set of parameters, as figures alone, without the names and values of assumptions. */
final class Uses {
    private Uses() {}

    static List<Object> all(Parameters parameters) {
        List<Object> figures = new ArrayList<>();
        for (MachineClass kind : List.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY)) {
            FloorMachine machine = FloorMachine.usual(kind, parameters);
            figures.add(machine);
            figures.add(machine.contact());
            List<JobStep> steps = List.of(
                    Jobs.step(Bond.METAL, 100, machine),
                    Jobs.step(Bond.TRANSITION, 100, machine),
                    Jobs.RESIN_400.withCutRate(new Share(215)),
                    JobStep.powder(
                            machine,
                            Range.of(4, 8),
                            Range.of(
                                    Jobs.RESIN_400.water().low(),
                                    Jobs.RESIN_400.water().low())),
                    Jobs.RESIN_800);
            List<JobStep> dry = steps.stream()
                    .map(step -> new JobStep(
                            "dry " + step.name(),
                            step.kind(),
                            step.grain(),
                            step.machine(),
                            step.passes(),
                            Range.of(new Coverage(0), new Coverage(0)),
                            step.cutRate(),
                            step.edges()))
                    .toList();
            List<JobStep> both = new ArrayList<>(steps);
            both.addAll(dry);
            for (FloorStone stone : List.of(FloorStone.marble(), FloorStone.granite())) {
                Job job = Jobs.marble(both.toArray(JobStep[]::new))
                        .withStone(stone)
                        .withSite(SiteConditions.usual(parameters))
                        .withSealing(Sealing.usual(parameters));
                Estimate estimate = new Estimator(parameters).estimate(job);
                estimate.work().forEach(line -> figures.add(List.of(line.name(), line.clock(), line.people())));
                estimate.consumables().forEach(line -> figures.add(List.of(line.name(), line.amount())));
                figures.addAll(estimate.routes());
                figures.add(estimate.calendar());
                for (PublicWork like : PublicWork.values()) {
                    figures.add(Plausibility.of(estimate, like, parameters).band());
                }
            }
        }
        return figures;
    }
}
