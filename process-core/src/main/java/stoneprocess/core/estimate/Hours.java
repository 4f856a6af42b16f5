package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.tool.MachineClass;

/** The course of one job: which work and which waits follow one another, and how long they take. */
final class Hours {
    /** While the machine runs or the floor is wet from it. */
    private static final Set<Work> WATCHED = EnumSet.of(Work.OPEN_FIELD, Work.RINSING, Work.SETTING_UP, Work.REWORK);

    private final Numbers numbers;
    private final Job job;
    private final List<CrewTiming> timings;
    private final int people;
    /** Square metres as wide tools count them. */
    private final double wide;

    private final List<Line> lines = new ArrayList<>();

    /** Hours of one person or machine, and what they rest on. */
    private record Timed(Spread<TimeSpan> clock, Basis basis, List<Assumption> assumptions) {}

    private Hours(Parameters parameters, Job job, List<CrewTiming> timings) {
        this.numbers = new Numbers(parameters);
        this.job = job;
        this.timings = timings;
        this.people = job.site().people();
        this.wide = Job.withWideTools(job.area(), parameters).squareMetres();
    }

    static List<Line> of(Job job, List<CrewTiming> timings, Parameters parameters) {
        Hours hours = new Hours(parameters, job, timings);
        hours.before();
        hours.others(Optional.empty());
        if (job.testArea()) {
            hours.testArea();
        }
        hours.others(Optional.of(OtherWork.TEST_AREA));
        for (JobStep step : job.steps()) {
            hours.step(step);
            hours.others(Optional.of(step.name()));
        }
        job.sealing().ifPresent(hours::seal);
        hours.others(Optional.of(OtherWork.SEALING));
        hours.barrier();
        hours.daily();
        return hours.lines;
    }

    private void before() {
        double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
        together(
                Work.MOBILISATION,
                Optional.empty(),
                which -> part * job.site().mobilisations() * numbers.at("estimate.mobilisation", which),
                numbers.ranged("estimate.mobilisation"));
        if (job.edges().high().kept() > 0) {
            shared(
                    Work.MASKING,
                    which -> along(which, numbers.divisor("estimate.masking", which.opposite())),
                    numbers.ranged("estimate.masking"));
        }
    }

    /** On the floor as it was prepared, so that what the owner signs is what the floor will look like. */
    private void testArea() {
        double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
        boolean large = job.area().kept() >= numbers.at("test-area-large.from");
        double places = large ? numbers.share("estimate.test-places") : 1;
        together(
                Work.TEST_AREA,
                Optional.empty(),
                which -> part
                        * (numbers.at("estimate.test-area", which)
                                + places * job.steps().size() * numbers.at("estimate.test-grit", which)),
                numbers.ranged("estimate.test-area"),
                numbers.ranged("estimate.test-grit"),
                numbers.single("estimate.test-places"));
        if (job.site().signOff().high().kept() > 0) {
            waiting(Wait.TEST_AREA, Optional.empty(), restOfTestArea());
            waiting(Wait.SIGN_OFF, Optional.empty(), job.site().signOff());
        }
    }

    /** What dries and cures on the floor does so on the test area before anybody can judge it. */
    private Range<TimeSpan> restOfTestArea() {
        List<Range<TimeSpan>> rests = Stream.concat(
                        job.others().stream()
                                .filter(other -> other.after().isPresent())
                                .map(OtherWork::curing),
                        job.sealing().stream().flatMap(sealing -> Stream.of(sealing.drying(), sealing.curing())))
                .toList();
        return Range.of(
                new TimeSpan(
                        rests.stream().mapToDouble(rest -> rest.low().minutes()).sum()),
                new TimeSpan(rests.stream()
                        .mapToDouble(rest -> rest.high().minutes())
                        .sum()));
    }

    private void others(Optional<String> after) {
        for (OtherWork other : job.others()) {
            if (other.after().equals(after)) {
                Optional<String> name = Optional.of(other.name());
                Spread<TimeSpan> work = Case.spread(which -> which.of(other.work()), TimeSpan::new);
                lines.add(new Line.WorkLine(
                        Work.OTHER_WORK, name, work, times(1.0 / people, work), work, Basis.GIVEN, List.of()));
                waiting(Wait.CURING, name, other.curing());
            }
        }
    }

    /**
     * One person runs the machine; the others do the edges and carry the slurry beside it, and help to the end when the
     * machine is done first.
     */
    private void step(JobStep step) {
        Optional<String> name = Optional.of(step.name());
        Timed field = field(step);
        Optional<Timed> edges =
                step.edges().filter(passes -> job.edges().high().kept() > 0).map(passes -> edges(step, passes));
        Optional<Timed> slurry = step.wet() ? Optional.of(slurry(step)) : Optional.empty();
        List<Timed> beside = Stream.of(edges, slurry).flatMap(Optional::stream).toList();
        Spread<TimeSpan> elapsed = Case.spread(
                which -> Math.max(
                        field.clock.at(which).minutes(),
                        (field.clock.at(which).minutes() + minutes(beside, which)) / people),
                TimeSpan::new);
        Spread<TimeSpan> none = Case.spread(which -> 0, TimeSpan::new);
        lines.add(line(Work.OPEN_FIELD, name, field, elapsed));
        edges.ifPresent(timed -> lines.add(line(Work.EDGES, name, timed, none)));
        Spread<TimeSpan> rinsing =
                Case.spread(which -> 60 * wide / numbers.divisor("estimate.rinsing", which.opposite()), TimeSpan::new);
        together(
                Work.RINSING,
                name,
                which -> rinsing.at(which).minutes(),
                numbers.ranged("estimate.rinsing"),
                numbers.single("estimate.wide-floor"),
                numbers.single("estimate.wide-rate"));
        double bays = bays(step);
        together(
                Work.SETTING_UP,
                name,
                which -> numbers.at("estimate.grit-set-up", which) + bays * numbers.at("estimate.bay-set-up", which),
                numbers.ranged("estimate.grit-set-up"),
                numbers.ranged("estimate.bay-set-up"));
        together(
                Work.REWORK,
                name,
                which -> (elapsed.at(which).minutes() + rinsing.at(which).minutes())
                        * numbers.share("estimate.rework", which),
                numbers.ranged("estimate.rework"));
        slurry.ifPresent(timed -> lines.add(line(Work.SLURRY, name, timed, none)));
    }

    private static double minutes(List<Timed> all, Case which) {
        return all.stream()
                .mapToDouble(timed -> timed.clock.at(which).minutes())
                .sum();
    }

    private Line.WorkLine line(Work work, Optional<String> name, Timed timed, Spread<TimeSpan> elapsed) {
        return new Line.WorkLine(
                work, name, timed.clock, elapsed, times(people, elapsed), timed.basis, timed.assumptions);
    }

    private static Spread<TimeSpan> times(double factor, Spread<TimeSpan> time) {
        return Case.spread(which -> factor * time.at(which).minutes(), TimeSpan::new);
    }

    private Timed slurry(JobStep step) {
        return new Timed(
                Case.spread(
                        which -> Consumption.litresOfSlurry(job, step, which, numbers)
                                / 1000
                                * numbers.at("estimate.slurry", which),
                        TimeSpan::new),
                Basis.DEFAULT,
                List.of(numbers.ranged("estimate.slurry")));
    }

    /** Square bays as long as a walk, of a planetary machine lanes; powder dries, so it goes in square bays under any. */
    private double bays(JobStep step) {
        double metres = numbers.parameters().get("estimate.bay", Length.class).millimetres() / 1000;
        double bay = step.machine().kind() == MachineClass.PLANETARY && step.kind() != StepKind.POWDER
                ? numbers.at("estimate.bay-planetary")
                : metres * metres;
        return StrictMath.ceil(job.area().squareMetres() / bay);
    }

    private Timed field(JobStep step) {
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
                    numbers.ranged(step.kind().walkParameter()),
                    numbers.single(job.stone().walkParameter()),
                    numbers.single("estimate.overlap"),
                    numbers.single("estimate.bay"),
                    numbers.single("estimate.turn"),
                    numbers.ranged("estimate.handling"));
        }
        return new Timed(
                Case.spread(which -> 60 * area / rate.applyAsDouble(which.opposite()), TimeSpan::new),
                timed.isPresent() ? Basis.CREW_TIMING : Basis.DEFAULT,
                assumptions);
    }

    /** Square metres an hour of all passes; the low rate belongs to the most passes. */
    private double walked(JobStep step, Case which) {
        Parameters parameters = numbers.parameters();
        double rate = new Kinematics(
                        step.machine().path(),
                        parameters.get("estimate.overlap", Share.class),
                        new Speed(which.of(step.kind().walked(job.stone(), parameters))),
                        step.passes(which.opposite()),
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

    private Timed edges(JobStep step, Range<Integer> passes) {
        Optional<Range<Speed>> timed = timing(step).flatMap(CrewTiming::edges);
        boolean powder = step.kind() == StepKind.POWDER;
        String parameter = powder ? "estimate.powder-edges" : "estimate.hand";
        ToDoubleFunction<Case> rate = timed.isPresent()
                ? which -> which.of(timed.get())
                : which -> numbers.divisor(parameter, which)
                        / (powder ? 1 : which.opposite().ofWhole(passes) / walkShare());
        return new Timed(
                Case.spread(which -> along(which, rate.applyAsDouble(which.opposite())), TimeSpan::new),
                timed.isPresent() ? Basis.CREW_TIMING : Basis.DEFAULT,
                timed.isPresent() ? List.of() : List.of(numbers.ranged(parameter)));
    }

    private double walkShare() {
        return numbers.share(job.stone().walkParameter());
    }

    private Optional<CrewTiming> timing(JobStep step) {
        return timings.stream()
                .filter(timing -> timing.step().equals(step.name()))
                .findFirst();
    }

    private void seal(Sealing sealing) {
        waiting(Wait.DRYING, Optional.empty(), sealing.drying());
        shared(
                Work.SEALING,
                which -> 60 * wide / numbers.divisor("estimate.sealing", which.opposite()),
                numbers.ranged("estimate.sealing"),
                numbers.single("estimate.wide-floor"),
                numbers.single("estimate.wide-rate"));
        waiting(Wait.SEALER_CURING, Optional.empty(), sealing.curing());
    }

    /** Beside the machine, for as long as people may walk up to it. */
    private void barrier() {
        SiteConditions site = job.site();
        double byDay = 1 - site.night().percent() / 100;
        if (site.atBarrier() > 0 && byDay > 0 && !job.steps().isEmpty()) {
            Spread<TimeSpan> watched = Case.spread(
                    which -> Estimate.lines(lines, Line.WorkLine.class)
                                    .filter(line -> WATCHED.contains(line.work()))
                                    .mapToDouble(
                                            line -> line.elapsed().at(which).minutes())
                                    .sum()
                            * byDay,
                    TimeSpan::new);
            lines.add(new Line.WorkLine(
                    Work.BARRIER,
                    Optional.empty(),
                    watched,
                    Case.spread(which -> 0, TimeSpan::new),
                    times(site.atBarrier(), watched),
                    Basis.DEFAULT,
                    List.of(numbers.single("estimate.at-barrier"))));
        }
    }

    /** What each day after the first takes to begin and end. */
    private void daily() {
        Spread<TimeSpan> each = daily(job, numbers);
        Spread<Count> days = Calendar.shifts(lines, job.site().times(), each);
        together(
                Work.DAILY,
                Optional.empty(),
                which -> Math.max(0, days.at(which).kept() - 1) * each.at(which).minutes(),
                job.site().night().percent() > 0
                        ? new Assumption[] {numbers.ranged("estimate.daily"), numbers.ranged("estimate.hand-back")}
                        : new Assumption[] {numbers.ranged("estimate.daily")});
        Spread<Count> returns = Calendar.returns(
                lines, job.site().times(), each, numbers.parameters().get("estimate.away", TimeSpan.class));
        if (returns.high().kept() > 0) {
            double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
            outsideTheShift(
                    Work.COMING_BACK,
                    which -> part * returns.at(which).kept() * numbers.at("estimate.mobilisation", which),
                    numbers.ranged("estimate.mobilisation"),
                    numbers.single("estimate.away"));
        }
        job.site().distance().ifPresent(way -> {
            outsideTheShift(
                    Work.ROAD,
                    which -> days.at(which).kept() * road(way, numbers, which),
                    numbers.ranged("estimate.road"));
        });
    }

    /**
     * What one day takes to begin and end, and by night to hand the floor back at each dawn but the last: less on a small floor, never more
     * than half of the shift.
     */
    static Spread<TimeSpan> daily(Job job, Numbers numbers) {
        double part = Job.ofUsual(job.area(), numbers.parameters()).percent() / 100;
        double byNight = job.site().night().percent() / 100;
        double most = job.site().shift().minutes() / 2;
        return Case.spread(
                which -> Math.min(
                        part
                                * (numbers.at("estimate.daily", which)
                                        + byNight * numbers.at("estimate.hand-back", which)),
                        most),
                TimeSpan::new);
    }

    /** Minutes to the site and back. */
    static double road(Length way, Numbers numbers, Case which) {
        return 2 * way.in(Unit.KILOMETRE).doubleValue() * numbers.at("estimate.road", which);
    }

    private double along(Case which, double metresPerMinute) {
        return which.of(job.edges()) / 1000 / metresPerMinute;
    }

    /** Work at which everybody on the site is. */
    private void together(
            Work work, Optional<String> subject, ToDoubleFunction<Case> minutes, Assumption... assumptions) {
        Spread<TimeSpan> clock = Case.spread(minutes, TimeSpan::new);
        lines.add(new Line.WorkLine(
                work, subject, clock, clock, times(people, clock), Basis.DEFAULT, List.of(assumptions)));
    }

    /** Work at which everybody is, and which takes nothing of the hours on the site. */
    private void outsideTheShift(Work work, ToDoubleFunction<Case> minutes, Assumption... assumptions) {
        Spread<TimeSpan> clock = Case.spread(minutes, TimeSpan::new);
        lines.add(new Line.WorkLine(
                work,
                Optional.empty(),
                clock,
                Case.spread(which -> 0, TimeSpan::new),
                times(people, clock),
                Basis.DEFAULT,
                List.of(assumptions)));
    }

    /** Work of one technician that all share. */
    private void shared(Work work, ToDoubleFunction<Case> minutes, Assumption... assumptions) {
        Spread<TimeSpan> clock = Case.spread(minutes, TimeSpan::new);
        lines.add(new Line.WorkLine(
                work, Optional.empty(), clock, times(1.0 / people, clock), clock, Basis.DEFAULT, List.of(assumptions)));
    }

    private void waiting(Wait reason, Optional<String> subject, Range<TimeSpan> hours) {
        if (hours.high().kept() > 0) {
            lines.add(new Line.WaitLine(reason, subject, Case.spread(which -> which.of(hours), TimeSpan::new)));
        }
    }
}
