package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.CuttingClass;
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
            List<JobStep> steps = List.of(
                    Jobs.step(Bond.METAL, 100, machine),
                    Jobs.step(Bond.TRANSITION, 100, machine),
                    Jobs.RESIN_400,
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
                            step.depth(),
                            step.machine(),
                            step.passes(),
                            Range.of(new Coverage(0), new Coverage(0)),
                            step.edges(),
                            Optional.empty()))
                    .toList();
            List<JobStep> both = new ArrayList<>(steps);
            both.addAll(dry);
            for (CuttingClass stone : List.of(CuttingClass.MEDIUM, CuttingClass.HARD)) {
                Job job = Jobs.marble(both.toArray(JobStep[]::new))
                        .withArea(new Area(405))
                        .withStone(stone)
                        .withSite(SiteConditions.usual(parameters)
                                .withUsualSignOff(parameters)
                                .withNight(new Share(30))
                                .withDistance(Optional.of(Length.of(10, Unit.KILOMETRE))))
                        .withSealing(Sealing.usual(parameters));
                Estimate estimate = new Estimator(parameters).estimate(job);
                estimate.work().forEach(line -> figures.add(List.of(line.name(), line.clock(), line.personHours())));
                estimate.consumables().forEach(line -> figures.add(List.of(line.name(), line.amount())));
                figures.add(List.of(
                        estimate.plausibility().orElseThrow().reckoned(),
                        estimate.plausibility().orElseThrow().published()));
                figures.add(estimate.calendar());
                figures.add(estimate.paidHours());
                figures.add(Job.ofUsual(new Area(1), parameters));
            }
        }
        return figures;
    }
}
