package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
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
                        .withSite(Site.usual(parameters))
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
        TimeSpan week = TimeSpan.of(7, Unit.DAY);
        for (int speed : new int[] {350, 360, 1990, 2000}) {
            try {
                figures.add(UpkeepTask.burnish(new Rotation(speed), week, parameters)
                        .rate());
            } catch (InvalidInputException e) {
                figures.add(e.getMessage());
            }
        }
        figures.add(UpkeepTask.scrub(week, parameters).rate());
        figures.add(UpkeepTask.strip(true, week, parameters).rate());
        figures.add(UpkeepTask.strip(false, week, parameters).rate());
        return figures;
    }
}
