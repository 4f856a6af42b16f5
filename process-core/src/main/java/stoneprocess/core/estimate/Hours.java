package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.tool.MachineClass;

/** The course of one job: which work and which waits follow one another, and how long they take. */
final class Hours {
    private static final Share ALONE = new Share(0);

    private final Numbers numbers;
    private final Job job;
    private final List<CrewTiming> timings;
    private final List<Line> lines = new ArrayList<>();

    private Hours(Parameters parameters, Job job, List<CrewTiming> timings) {
        this.numbers = new Numbers(parameters);
        this.job = job;
        this.timings = timings;
    }

    static List<Line> of(Job job, List<CrewTiming> timings, Parameters parameters) {
        Hours hours = new Hours(parameters, job, timings);
        hours.before();
        hours.others(Optional.empty());
        hours.testArea();
        for (JobStep step : job.steps()) {
            hours.step(step);
            hours.others(Optional.of(step.name()));
        }
        job.sealing().ifPresent(hours::seal);
        hours.others(Optional.of(OtherWork.SEALING));
        hours.daily();
        return hours.lines;
    }

    private void before() {
        boolean anyWet = job.steps().stream().anyMatch(JobStep::wet);
        double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
        work(
                Work.MOBILISATION,
                Optional.empty(),
                which -> part * job.site().mobilisations() * numbers.at("estimate.mobilisation", which),
                helper(anyWet),
                List.of(numbers.ranged("estimate.mobilisation")));
        if (job.edges().kept() > 0) {
            work(
                    Work.MASKING,
                    Optional.empty(),
                    which -> along(job.edges(), numbers.divisor("estimate.masking", which.opposite())),
                    ALONE,
                    List.of(numbers.ranged("estimate.masking")));
        }
    }

    /** On the floor as it was prepared, so that what the owner signs is what the floor will look like. */
    private void testArea() {
        boolean anyWet = job.steps().stream().anyMatch(JobStep::wet);
        double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
        work(
                Work.TEST_AREA,
                Optional.empty(),
                which -> part * numbers.at("estimate.test-area", which),
                helper(anyWet),
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
                        ALONE,
                        Basis.GIVEN,
                        List.of()));
                waiting(Wait.CURING, name, other.curing());
            }
        }
    }

    private void step(JobStep step) {
        Optional<String> name = Optional.of(step.name());
        Line.WorkLine field = field(step, name);
        lines.add(field);
        ToDoubleFunction<Case> cutting = which -> field.clock().at(which).minutes();
        if (step.edges().isPresent() && job.edges().kept() > 0) {
            Line.WorkLine edges = edges(step, name, step.edges().get());
            lines.add(edges);
            cutting = which ->
                    field.clock().at(which).minutes() + edges.clock().at(which).minutes();
        }
        ToDoubleFunction<Case> cut = cutting;
        double rinsing = numbers.share("estimate.rinsing");
        Share helper = helper(step);
        work(
                Work.RINSING,
                name,
                which -> cut.applyAsDouble(which) * rinsing,
                helper,
                List.of(numbers.single("estimate.rinsing")));
        double bays = bays(step);
        work(
                Work.SETTING_UP,
                name,
                which -> numbers.at("estimate.grit-set-up", which) + bays * numbers.at("estimate.bay-set-up", which),
                helper,
                List.of(numbers.ranged("estimate.grit-set-up"), numbers.ranged("estimate.bay-set-up")));
        work(
                Work.REWORK,
                name,
                which -> cut.applyAsDouble(which) * (1 + rinsing) * numbers.share("estimate.rework", which),
                helper,
                List.of(numbers.ranged("estimate.rework")));
        if (step.wet()) {
            work(
                    Work.SLURRY,
                    name,
                    which -> Consumption.litresOfSlurry(job, step, which, numbers)
                            / 1000
                            * numbers.at("estimate.slurry", which),
                    ALONE,
                    List.of(numbers.ranged("estimate.slurry")));
        }
    }

    /** Square bays as long as a walk, of a planetary machine lanes; powder dries, so it goes in square bays under any. */
    private double bays(JobStep step) {
        double metres = numbers.parameters().get("estimate.bay", Length.class).millimetres() / 1000;
        double bay = step.machine().kind() == MachineClass.PLANETARY && step.kind() != StepKind.POWDER
                ? numbers.at("estimate.bay-planetary")
                : metres * metres;
        return StrictMath.ceil(job.area().squareMetres() / bay);
    }

    private Line.WorkLine field(JobStep step, Optional<String> name) {
        double area = job.area().squareMetres();
        Optional<Range<AreaRate>> timed = timing(step).flatMap(CrewTiming::field);
        ToDoubleFunction<Case> rate;
        List<Assumption> assumptions;
        if (timed.isPresent()) {
            rate = which -> which.of(timed.get());
            assumptions = List.of();
        } else if (step.kind() == StepKind.POWDER) {
            boolean hard = job.stone() == CuttingClass.HARD;
            rate = which -> numbers.divisor("estimate.powder", which)
                    / (hard ? numbers.share("estimate.powder-hard", which.opposite()) : 1);
            assumptions = hard
                    ? List.of(numbers.ranged("estimate.powder"), numbers.ranged("estimate.powder-hard"))
                    : List.of(numbers.ranged("estimate.powder"));
        } else {
            rate = which -> walked(step, which);
            assumptions = List.of(
                    numbers.ranged("estimate.walk." + step.kind().key()),
                    numbers.single("estimate.overlap"),
                    numbers.single("estimate.bay"),
                    numbers.single("estimate.turn"),
                    numbers.ranged("estimate.handling"));
        }
        return new Line.WorkLine(
                Work.OPEN_FIELD,
                name,
                Case.spread(which -> 60 * area / rate.applyAsDouble(which.opposite()), TimeSpan::new),
                helper(step),
                timed.isPresent() ? Basis.CREW_TIMING : Basis.DEFAULT,
                assumptions);
    }

    /** Square metres an hour of all passes; the low rate belongs to the most passes. */
    private double walked(JobStep step, Case which) {
        Parameters parameters = numbers.parameters();
        double rate = new Kinematics(
                        step.machine().path(),
                        parameters.get("estimate.overlap", Share.class),
                        new Speed(numbers.at("estimate.walk." + step.kind().key(), which)),
                        which.opposite().ofWhole(step.passes()),
                        parameters.get("estimate.bay", Length.class),
                        parameters.get("estimate.turn", TimeSpan.class),
                        new Share(numbers.at("estimate.handling", which.opposite())))
                .rate()
                .kept();
        if (rate == 0) {
            throw new InvalidInputException(step.name(), "0 m2/h", "passes with which the step gets on");
        }
        return rate;
    }

    private Line.WorkLine edges(JobStep step, Optional<String> name, Range<Integer> passes) {
        Optional<Range<Speed>> timed = timing(step).flatMap(CrewTiming::edges);
        boolean powder = step.kind() == StepKind.POWDER;
        String parameter = powder ? "estimate.powder-edges" : "estimate.hand";
        ToDoubleFunction<Case> rate = timed.isPresent()
                ? which -> which.of(timed.get())
                : which -> numbers.divisor(parameter, which)
                        / (powder ? 1 : which.opposite().ofWhole(passes));
        return new Line.WorkLine(
                Work.EDGES,
                name,
                Case.spread(which -> along(job.edges(), rate.applyAsDouble(which.opposite())), TimeSpan::new),
                ALONE,
                timed.isPresent() ? Basis.CREW_TIMING : Basis.DEFAULT,
                timed.isPresent() ? List.of() : List.of(numbers.ranged(parameter)));
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
                which -> 60
                        * Job.withWideTools(job.area(), numbers.parameters()).squareMetres()
                        / numbers.divisor("estimate.sealing", which.opposite()),
                ALONE,
                List.of(
                        numbers.ranged("estimate.sealing"),
                        numbers.single("estimate.wide-floor"),
                        numbers.single("estimate.wide-rate")));
        waiting(Wait.SEALER_CURING, Optional.empty(), sealing.curing());
    }

    /** Each shift that the other work fills begins and ends; the first one with the travel. */
    private void daily() {
        boolean anyWet = job.steps().stream().anyMatch(JobStep::wet);
        Spread<TimeSpan> all = Case.spread(
                which -> Estimate.lines(lines, Line.WorkLine.class)
                        .mapToDouble(line -> line.clock().at(which).minutes())
                        .sum(),
                TimeSpan::new);
        double shift = job.site().shift().minutes();
        work(
                Work.DAILY,
                Optional.empty(),
                which -> Math.max(0, StrictMath.ceil(all.at(which).minutes() / shift) - 1)
                        * numbers.at("estimate.daily", which),
                helper(anyWet),
                List.of(numbers.ranged("estimate.daily")));
    }

    private static double along(Length edges, double metresPerMinute) {
        return edges.millimetres() / 1000 / metresPerMinute;
    }

    /** A helper serves the cuts; the published rates of powder have none to speak of. */
    private Share helper(JobStep step) {
        return helper(step.wet() && step.kind() != StepKind.POWDER);
    }

    private Share helper(boolean wet) {
        return wet ? numbers.parameters().get("estimate.helper", Share.class) : ALONE;
    }

    private void work(
            Work work,
            Optional<String> subject,
            ToDoubleFunction<Case> minutes,
            Share helper,
            List<Assumption> assumptions) {
        lines.add(new Line.WorkLine(
                work, subject, Case.spread(minutes, TimeSpan::new), helper, Basis.DEFAULT, assumptions));
    }

    private void waiting(Wait reason, Optional<String> subject, Range<TimeSpan> hours) {
        if (hours.high().kept() > 0) {
            lines.add(new Line.WaitLine(reason, subject, Case.spread(which -> which.of(hours), TimeSpan::new)));
        }
    }
}
