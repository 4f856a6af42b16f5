package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.tool.MachineClass;

/**
 * The machine's hours in the open field beside published rates of such steps, without setting up. A cut counts as one of
 * {@code estimate.band.cut}, powder as {@code estimate.powder}; a planetary machine and hard stone are from memory, and
 * {@code estimate.band.margin} is left on either side.
 *
 * @param reckoned all steps one after the other, by the estimate
 * @param published the same by the published rates
 * @param outside names of the steps that lie outside their own rates
 * @param assumptions the numbers behind the published rates
 */
public record Plausibility(
        Spread<AreaRate> reckoned, Range<AreaRate> published, List<String> outside, List<Assumption> assumptions) {
    public Plausibility {
        Refuse.nulls(Plausibility.class, reckoned, published, outside, assumptions);
        outside = List.copyOf(outside);
        assumptions = List.copyOf(assumptions);
    }

    /** Whether the likely rate lies within the published ones. */
    public boolean plausible() {
        return published.contains(reckoned.likely());
    }

    /** The comparison of a job's steps; empty where it has none. */
    static Optional<Plausibility> of(Job job, List<Line> lines, Parameters parameters) {
        if (job.steps().isEmpty()) {
            return Optional.empty();
        }
        Numbers numbers = new Numbers(parameters);
        double least = 0;
        double most = 0;
        List<String> outside = new ArrayList<>();
        for (JobStep step : job.steps()) {
            Range<AreaRate> band = band(step, job.stone(), numbers);
            least += 1 / band.high().kept();
            most += 1 / band.low().kept();
            AreaRate likely = new AreaRate(60 * job.area().squareMetres() / field(lines, step.name(), Case.LIKELY));
            if (!band.contains(likely)) {
                outside.add(step.name());
            }
        }
        return Optional.of(new Plausibility(
                Case.spread(which -> 60 * job.area().squareMetres() / all(job, lines, which.opposite()), AreaRate::new),
                Range.of(new AreaRate(1 / most), new AreaRate(1 / least)),
                outside,
                assumptions(job, numbers)));
    }

    private static double all(Job job, List<Line> lines, Case which) {
        return job.steps().stream()
                .mapToDouble(step -> field(lines, step.name(), which))
                .sum();
    }

    private static double field(List<Line> lines, String step, Case which) {
        return Estimate.lines(lines, Line.WorkLine.class)
                .filter(line -> line.work() == Work.OPEN_FIELD && line.subject().equals(Optional.of(step)))
                .mapToDouble(line -> line.clock().at(which).minutes())
                .sum();
    }

    private static String parameter(JobStep step) {
        if (step.kind() == StepKind.POWDER) {
            return "estimate.powder";
        }
        return step.machine().kind() == MachineClass.PLANETARY ? "estimate.band.planetary" : "estimate.band.cut";
    }

    private static Range<AreaRate> band(JobStep step, CuttingClass stone, Numbers numbers) {
        boolean hard = stone == CuttingClass.HARD;
        double margin = numbers.share("estimate.band.margin");
        double fewerHours = hard ? numbers.share("estimate.band.hard", Case.LOW) : 1;
        double moreHours = hard ? numbers.share("estimate.band.hard", Case.HIGH) : 1;
        return Range.of(
                new AreaRate(numbers.at(parameter(step), Case.LOW) / moreHours * (1 - margin)),
                new AreaRate(numbers.at(parameter(step), Case.HIGH) / fewerHours * (1 + margin)));
    }

    private static List<Assumption> assumptions(Job job, Numbers numbers) {
        Stream<Assumption> rates =
                job.steps().stream().map(Plausibility::parameter).distinct().map(numbers::ranged);
        Stream<Assumption> hard =
                job.stone() == CuttingClass.HARD ? Stream.of(numbers.ranged("estimate.band.hard")) : Stream.of();
        return Stream.of(rates, hard, Stream.of(numbers.single("estimate.band.margin")))
                .flatMap(all -> all)
                .toList();
    }
}
