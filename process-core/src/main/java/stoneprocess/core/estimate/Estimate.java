package stoneprocess.core.estimate;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Hours, calendar and consumables of a job, each as low, likely and high.
 *
 * @param job what was estimated
 * @param lines the job's course: work and waits in order
 * @param calendar working days, waiting hours and days until the floor is used again
 * @param paidHours {@link #personHours} and what short days lack of {@code estimate.least-attendance} of a shift, which each
 *     person is paid for on each day on the site; from memory, low confidence
 * @param consumables what each step uses up and leaves over
 * @param plausibility the steps beside published rates; empty where no machine cuts
 * @param remarks what a reader has to know
 */
public record Estimate(
        Job job,
        List<Line> lines,
        Calendar calendar,
        Spread<TimeSpan> paidHours,
        List<Consumable> consumables,
        Optional<Plausibility> plausibility,
        Set<Remark> remarks) {
    public Estimate {
        Refuse.nulls(Estimate.class, job, lines, calendar, paidHours, consumables, plausibility, remarks);
        lines = List.copyOf(lines);
        consumables = List.copyOf(consumables);
        remarks = Collections.unmodifiableSet(new TreeSet<>(remarks));
    }

    /** The lines of work, in order. */
    public List<Line.WorkLine> work() {
        return lines(lines, Line.WorkLine.class).toList();
    }

    /** The lines of one kind, in order. */
    static <L extends Line> Stream<L> lines(List<Line> lines, Class<L> kind) {
        return lines.stream().filter(kind::isInstance).map(kind::cast);
    }

    /** The line of some work on a step or other work, if there is one. */
    public Optional<Line.WorkLine> work(Work work, String subject) {
        return work().stream()
                .filter(line -> line.work() == work && line.subject().equals(Optional.of(subject)))
                .findFirst();
    }

    /** Hours that the site is worked, by the clock. */
    public Spread<TimeSpan> clock() {
        return Case.spread(
                which -> work().stream()
                        .mapToDouble(line -> line.elapsed().at(which).minutes())
                        .sum(),
                TimeSpan::new);
    }

    /** Hours worked: of everybody on the site while it is worked, and on the road. */
    public Spread<TimeSpan> personHours() {
        return personHours(lines);
    }

    /** Hours of all people for one kind of work. */
    Spread<TimeSpan> personHours(Work work) {
        return personHours(lines.stream()
                .filter(line -> line instanceof Line.WorkLine worked && worked.work() == work)
                .toList());
    }

    static Spread<TimeSpan> personHours(List<Line> lines) {
        return Case.spread(
                which -> lines(lines, Line.WorkLine.class)
                        .mapToDouble(line -> line.personHours().at(which).minutes())
                        .sum(),
                TimeSpan::new);
    }

    /** The sum of one kind over all steps; empty when no step uses it. */
    public Optional<Spread<Quantity>> total(ConsumableKind kind) {
        List<Consumable> lines =
                consumables.stream().filter(line -> line.kind() == kind).toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Spread<>(sum(lines, Case.LOW), sum(lines, Case.LIKELY), sum(lines, Case.HIGH)));
    }

    private static Quantity sum(List<Consumable> lines, Case which) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Consumable line : lines) {
            sum = sum.add(line.amount().at(which).decimal());
        }
        return Quantity.of(sum, lines.get(0).amount().low().dimension().unit());
    }

    /**
     * Area finished in one working day by one machine: area times shift over the clock hours of the open field, rinsing,
     * setting up and rework. Edges are another tool's. The lowest area belongs to the highest hours.
     *
     * @throws InvalidInputException for a job without steps
     */
    public Spread<Area> areaPerMachineDay() {
        if (job.steps().isEmpty()) {
            throw new InvalidInputException("job.steps", "none", "at least one step");
        }
        return Case.spread(
                which -> job.area().squareMetres() * job.site().shift().minutes() / machineMinutes(which.opposite()),
                Area::new);
    }

    private double machineMinutes(Case which) {
        return job.steps().stream()
                .mapToDouble(step -> Stream.of(Work.OPEN_FIELD, Work.RINSING, Work.SETTING_UP, Work.REWORK)
                        .mapToDouble(work -> minutes(work, step, which))
                        .sum())
                .sum();
    }

    /** Minutes of some work at a step; none when there is no such line. */
    double minutes(Work work, JobStep step, Case which) {
        return work(work, step.name())
                .map(line -> line.clock().at(which).minutes())
                .orElse(0.0);
    }
}
