package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;

/** The course of one job: which work and which waits follow one another, and how long they take. */
final class Hours {
    private final Numbers numbers;
    private final Productivity productivity;
    private final Job job;
    private final List<CrewTiming> timings;
    private final List<Line> lines = new ArrayList<>();

    private Hours(Parameters parameters, Job job, List<CrewTiming> timings) {
        this.numbers = new Numbers(parameters);
        this.productivity = new Productivity(parameters);
        this.job = job;
        this.timings = timings;
    }

    static List<Line> of(Job job, List<CrewTiming> timings, Parameters parameters) {
        Hours hours = new Hours(parameters, job, timings);
        hours.before();
        hours.others(Optional.empty());
        for (JobStep step : job.steps()) {
            hours.step(step);
            hours.others(Optional.of(step.name()));
        }
        job.sealing().ifPresent(hours::seal);
        return hours.lines;
    }

    private void before() {
        boolean anyWet = job.steps().stream().anyMatch(JobStep::wet);
        work(
                Work.MOBILISATION,
                Optional.empty(),
                which -> job.site().mobilisations() * numbers.at("estimate.mobilisation", which),
                people(anyWet),
                List.of(numbers.ranged("estimate.mobilisation")));
        if (job.edges().kept() > 0) {
            work(
                    Work.MASKING,
                    Optional.empty(),
                    which -> along(job.edges(), numbers.divisor("estimate.masking", which.opposite())),
                    people(false),
                    List.of(numbers.ranged("estimate.masking")));
        }
        work(
                Work.TEST_AREA,
                Optional.empty(),
                which -> numbers.at("estimate.test-area", which),
                people(anyWet),
                List.of(numbers.ranged("estimate.test-area")));
        waiting(Wait.SIGN_OFF, Optional.empty(), job.site().signOff());
    }

    private void others(Optional<String> after) {
        for (OtherWork other : job.others()) {
            if (other.after().equals(after)) {
                Optional<String> name = Optional.of(other.name());
                lines.add(new Line.WorkLine(
                        Work.OTHER_WORK,
                        name,
                        Case.spread(which -> which.of(other.work()), TimeSpan::new),
                        people(false),
                        Basis.GIVEN,
                        List.of()));
                waiting(Wait.CURING, name, other.curing());
            }
        }
    }

    private void step(JobStep step) {
        Optional<String> name = Optional.of(step.name());
        int people = people(step.wet());
        Line.WorkLine field = field(step, name, people);
        lines.add(field);
        ToDoubleFunction<Case> cutting = which -> field.clock().at(which).minutes();
        if (step.edges() && job.edges().kept() > 0) {
            Line.WorkLine edges = edges(step, name, people);
            lines.add(edges);
            cutting = which ->
                    field.clock().at(which).minutes() + edges.clock().at(which).minutes();
        }
        ToDoubleFunction<Case> cut = cutting;
        ToDoubleFunction<Case> rinsing = which -> cut.applyAsDouble(which) * numbers.share("estimate.rinsing");
        ToDoubleFunction<Case> both = which -> cut.applyAsDouble(which) + rinsing.applyAsDouble(which);
        work(Work.RINSING, name, rinsing, people, List.of(numbers.single("estimate.rinsing")));
        for (Work share : List.of(Work.SETTING_UP, Work.REWORK)) {
            String parameter = share == Work.REWORK ? "estimate.rework" : "estimate.set-up";
            work(
                    share,
                    name,
                    which -> both.applyAsDouble(which) * numbers.share(parameter, which),
                    people,
                    List.of(numbers.ranged(parameter)));
        }
    }

    private Line.WorkLine field(JobStep step, Optional<String> name, int people) {
        double area = job.area().squareMetres();
        Optional<? extends Range<? extends Quantity>> timed = timing(step).flatMap(CrewTiming::field);
        if (timed.isPresent()) {
            Range<? extends Quantity> rate = timed.get();
            return new Line.WorkLine(
                    Work.OPEN_FIELD,
                    name,
                    Case.spread(which -> 60 * area / which.opposite().of(rate), TimeSpan::new),
                    people,
                    Basis.CREW_TIMING,
                    List.of());
        }
        Spread<AreaRate> rate = productivity.walked(step, job.stone());
        if (rate.low().kept() == 0) {
            throw new InvalidInputException(
                    step.name(), rate.low().print(), "load, speed and passes with which the step gets on");
        }
        return new Line.WorkLine(
                Work.OPEN_FIELD,
                name,
                Case.spread(which -> 60 * area / rate.at(which.opposite()).kept(), TimeSpan::new),
                people,
                Basis.DEFAULT,
                productivity.assumptions(step.kind()));
    }

    private Line.WorkLine edges(JobStep step, Optional<String> name, int people) {
        Optional<? extends Range<? extends Quantity>> timed = timing(step).flatMap(CrewTiming::edges);
        if (timed.isEmpty()) {
            Require.positive(
                    "estimate.edges.low", numbers.range("estimate.edges").low());
        }
        Range<? extends Quantity> rate = timed.isPresent() ? timed.get() : numbers.range("estimate.edges");
        return new Line.WorkLine(
                Work.EDGES,
                name,
                Case.spread(which -> along(job.edges(), which.opposite().of(rate)), TimeSpan::new),
                people,
                timed.isPresent() ? Basis.CREW_TIMING : Basis.DEFAULT,
                timed.isPresent() ? List.of() : List.of(numbers.ranged("estimate.edges")));
    }

    private Optional<CrewTiming> timing(JobStep step) {
        return timings.stream()
                .filter(timing -> timing.step().equals(step.name()))
                .findFirst();
    }

    private void seal(Sealing sealing) {
        waiting(Wait.DRYING, Optional.empty(), sealing.drying());
        work(
                Work.SEALING,
                Optional.empty(),
                which -> 60 * job.area().squareMetres() / numbers.divisor("estimate.sealing", which.opposite()),
                people(false),
                List.of(numbers.ranged("estimate.sealing")));
        waiting(Wait.SEALER_CURING, Optional.empty(), sealing.curing());
    }

    private static double along(Length edges, double metresPerMinute) {
        return edges.millimetres() / 1000 / metresPerMinute;
    }

    private int people(boolean wet) {
        return (int) numbers.at(wet ? "estimate.people.wet" : "estimate.people.dry");
    }

    private void work(
            Work work,
            Optional<String> subject,
            ToDoubleFunction<Case> minutes,
            int people,
            List<Assumption> assumptions) {
        lines.add(new Line.WorkLine(
                work, subject, Case.spread(minutes, TimeSpan::new), people, Basis.DEFAULT, assumptions));
    }

    private void waiting(Wait reason, Optional<String> subject, Range<TimeSpan> hours) {
        if (hours.high().kept() > 0) {
            lines.add(new Line.WaitLine(reason, subject, Case.spread(which -> which.of(hours), TimeSpan::new)));
        }
    }
}
