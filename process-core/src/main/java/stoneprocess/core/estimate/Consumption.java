package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Energy;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Volume;

/** What the steps of a job use up and leave over. */
final class Consumption {
    private final Numbers numbers;
    private final Job job;
    private final List<Line> lines;
    private final List<Consumable> used = new ArrayList<>();

    private Consumption(Parameters parameters, Job job, List<Line> lines) {
        this.numbers = new Numbers(parameters);
        this.job = job;
        this.lines = lines;
    }

    static List<Consumable> of(Job job, List<Line> lines, Parameters parameters) {
        Consumption consumption = new Consumption(parameters, job, lines);
        job.steps().forEach(consumption::step);
        return consumption.used;
    }

    private void step(JobStep step) {
        if (step.kind() == StepKind.POWDER) {
            add(ConsumableKind.POWDER, step, which -> powder(step, which), Mass::new, "estimate.powder-kilogram");
        } else {
            String life = "estimate.pads." + step.kind().key();
            add(ConsumableKind.PAD_WEAR, step, which -> 100 * sets(step, which), Share::new, life);
            add(ConsumableKind.PAD_SETS, step, which -> StrictMath.ceil(sets(step, which)), Count::new, life);
        }
        if (step.wet()) {
            add(ConsumableKind.WATER, step, which -> water(step, which), Volume::new, "estimate.rinse-water");
            add(ConsumableKind.SLURRY, step, which -> slurry(step, which), Volume::new, "estimate.slurry-kept");
        }
        add(
                ConsumableKind.SOLIDS,
                step,
                which -> stone(step, which) * numbers.at("estimate.stone-litre") + powder(step, which),
                Mass::new,
                "estimate.stone-litre");
        add(ConsumableKind.ENERGY, step, which -> energy(step, which), Energy::new, "estimate.load");
    }

    private void add(
            ConsumableKind kind,
            JobStep step,
            ToDoubleFunction<Case> amount,
            DoubleFunction<Quantity> make,
            String assumption) {
        used.add(new Consumable(
                kind,
                step.name(),
                Case.spread(amount, make),
                List.of(Assumption.of(assumption, numbers.parameters()), numbers.ranged("estimate.rework"))));
    }

    /** The slurry of a wet step. */
    static double litresOfSlurry(Job job, JobStep step, Case which, Numbers numbers) {
        return new Consumption(numbers.parameters(), job, List.of()).slurry(step, which);
    }

    private double slurry(JobStep step, Case which) {
        return water(step, which) * numbers.share("estimate.slurry-kept", which) + stone(step, which);
    }

    /** Square metres with what is gone over again. */
    private double area(Case which) {
        return job.area().squareMetres() * (1 + numbers.share("estimate.rework", which));
    }

    /** A set's life is told for {@code estimate.pads.passes}; more passes wear it in proportion. */
    private double sets(JobStep step, Case which) {
        double life = numbers.divisor("estimate.pads." + step.kind().key(), which.opposite());
        return area(which) * step.passes(which) / numbers.at("estimate.pads.passes") / life;
    }

    /** Kilograms. */
    private double powder(JobStep step, Case which) {
        return step.kind() == StepKind.POWDER
                ? area(which) / numbers.divisor("estimate.powder-kilogram", which.opposite())
                : 0;
    }

    private double water(JobStep step, Case which) {
        return area(which) * (step.passes(which) * which.of(step.water()) + numbers.at("estimate.rinse-water", which));
    }

    /** Litres of stone: millimetres over square metres. */
    private double stone(JobStep step, Case which) {
        return area(which) * step.depth(which);
    }

    /** Kilowatt hours of the machine under load and of the wet vacuum while rinsing. */
    private double energy(JobStep step, Case which) {
        double load = step.machine().power().kept() * numbers.share("estimate.load", which);
        return hours(Work.OPEN_FIELD, step, which) * (1 + numbers.share("estimate.rework", which)) * load
                + hours(Work.RINSING, step, which) * numbers.at("estimate.vacuum");
    }

    private double hours(Work work, JobStep step, Case which) {
        return Estimate.lines(lines, Line.WorkLine.class)
                        .filter(line -> line.work() == work && line.subject().equals(Optional.of(step.name())))
                        .map(line -> line.clock().at(which))
                        .mapToDouble(TimeSpan::minutes)
                        .sum()
                / 60;
    }
}
