package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.tool.MachineClass;

/**
 * Area per hour of a step by two routes: how the machine is walked, and what technicians do by common practice.
 * Immutable and safe to share between threads.
 */
public final class Productivity {
    private static final AbrasionResistance REFERENCE = FloorStone.marble().resistance();
    private static final AbrasionResistance GRANITE = FloorStone.granite().resistance();

    private final Parameters parameters;
    private final Numbers numbers;
    private final Map<MachineClass, Contact> usual = new EnumMap<>(MachineClass.class);

    /** With the given numbers; those of this room are called {@code estimate.*}. */
    public Productivity(Parameters parameters) {
        this.parameters = parameters;
        this.numbers = new Numbers(parameters);
        for (MachineClass kind : List.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY)) {
            usual.put(kind, FloorMachine.usual(kind, parameters).contact());
        }
    }

    /**
     * How fast a step cuts. The crew's own rate when the step has one; otherwise Preston's p v over Ha, against the
     * usual machine of the class on marble of Ha 10 (ASTM C503). Machines without a usual setting, anything but single
     * disc and planetary, are their own reference, so that only the stone counts.
     */
    public CutRate cutRate(JobStep step, FloorStone stone) {
        if (step.cutRate().isPresent()) {
            return new CutRate(step.cutRate().get(), Optional.empty());
        }
        Contact contact = step.machine().contact();
        RelativeRemoval removal = new RelativeRemoval(
                contact, stone.resistance(), usual.getOrDefault(step.machine().kind(), contact), REFERENCE);
        return new CutRate(removal.share(), Optional.of(removal));
    }

    /** Whether the step would cut faster than the walking speed is raised for ({@code estimate.walk.fastest}). */
    public boolean capped(JobStep step, FloorStone stone) {
        return cutRate(step, stone).share().percent() > numbers.at("estimate.walk.fastest");
    }

    /**
     * Square metres an hour of the whole step, all passes, by the way the machine is walked: {@link Kinematics} with
     * the walking speed on marble ({@code estimate.walk.*}) times the cut rate, at most {@code estimate.walk.fastest}.
     * Setting up and rinsing come on top.
     *
     * @return slowest, likely and fastest
     */
    public Spread<AreaRate> walked(JobStep step, FloorStone stone) {
        double factor = walkFactor(cutRate(step, stone).share().percent() / 100);
        return Case.spread(which -> rate(step, factor, which), AreaRate::new);
    }

    private double walkFactor(double cut) {
        return Math.min(cut, numbers.share("estimate.walk.fastest"));
    }

    private double rate(JobStep step, double walkFactor, Case which) {
        return rate(step.kind(), step.machine().path(), which.opposite().ofWhole(step.passes()), walkFactor, which);
    }

    private double rate(StepKind kind, Length path, double passes, double walkFactor, Case which) {
        return new Kinematics(
                        path,
                        parameters.get("estimate.overlap", Share.class),
                        new Speed(walkFactor * numbers.at("estimate.walk." + kind.key(), which)),
                        passes,
                        parameters.get("estimate.bay", Length.class),
                        parameters.get("estimate.turn", TimeSpan.class),
                        new Share(numbers.at("estimate.handling", which.opposite())))
                .rate()
                .kept();
    }

    /**
     * What one technician does of such a step in an hour by common practice, with a single disc and the usual passes;
     * empty for transition bonds, powder and soft stone.
     */
    public Optional<Range<AreaRate>> practice(StepKind kind, Hardness hardness) {
        boolean named = (kind == StepKind.METAL || kind == StepKind.RESIN) && hardness != Hardness.SOFT;
        return named
                ? Optional.of(parameters.range("estimate.rate." + kind.key() + "." + hardness.key(), AreaRate.class))
                : Optional.empty();
    }

    /** Both routes of a step, whether they agree, and what explains it when they do not. */
    public RouteCheck check(JobStep step, FloorStone stone) {
        Spread<AreaRate> walked = walked(step, stone);
        Optional<Range<AreaRate>> practice = practice(step.kind(), stone.hardness());
        List<RouteCheck.Departure> departures = practice.isPresent() ? departures(step, stone) : List.of();
        return new RouteCheck(
                step.name(),
                cutRate(step, stone),
                walked,
                practice,
                practice.map(band -> agreement(walked.likely(), band, departures))
                        .orElse(RouteCheck.Agreement.NO_BAND),
                departures);
    }

    private static RouteCheck.Agreement agreement(
            AreaRate likely, Range<AreaRate> band, List<RouteCheck.Departure> departures) {
        if (band.contains(likely)) {
            return RouteCheck.Agreement.AGREE;
        }
        double without = likely.kept();
        for (RouteCheck.Departure departure : departures) {
            without /= departure.factor().percent() / 100;
        }
        return band.contains(new AreaRate(without))
                ? RouteCheck.Agreement.EXPLAINED
                : RouteCheck.Agreement.NOT_EXPLAINED;
    }

    /** Takes the differences out one after the other, so that their factors multiply to the whole. */
    private List<RouteCheck.Departure> departures(JobStep step, FloorStone stone) {
        double cut = walkFactor(cutRate(step, stone).share().percent() / 100);
        AbrasionResistance usualStone = stone.hardness() == Hardness.HARD ? GRANITE : REFERENCE;
        double usualCut = walkFactor(REFERENCE.ha() / usualStone.ha());
        Length usualPath = parameters.get("estimate.machine.single-disc.path", Length.class);
        double usualPasses =
                Case.LIKELY.of(numbers.range(step.kind() == StepKind.METAL ? "passes.first" : "passes.later"));
        double passes = Case.LIKELY.ofWhole(step.passes());

        double whole = rate(step.kind(), step.machine().path(), passes, cut, Case.LIKELY);
        double onUsualPath = rate(step.kind(), usualPath, passes, cut, Case.LIKELY);
        double withUsualPasses = rate(step.kind(), usualPath, usualPasses, cut, Case.LIKELY);
        double usual = rate(step.kind(), usualPath, usualPasses, usualCut, Case.LIKELY);

        List<RouteCheck.Departure> departures = new ArrayList<>();
        add(departures, RouteCheck.Cause.PATH_WIDTH, whole / onUsualPath);
        add(departures, RouteCheck.Cause.PASSES, onUsualPath / withUsualPasses);
        add(departures, RouteCheck.Cause.CUT_RATE, withUsualPasses / usual);
        return departures;
    }

    private static void add(List<RouteCheck.Departure> departures, RouteCheck.Cause cause, double factor) {
        Share share = new Share(100 * factor);
        if (share.percent() != 100) {
            departures.add(new RouteCheck.Departure(cause, share));
        }
    }

    List<Assumption> assumptions(StepKind kind) {
        return List.of(
                numbers.ranged("estimate.walk." + kind.key()),
                numbers.single("estimate.overlap"),
                numbers.single("estimate.bay"),
                numbers.single("estimate.turn"),
                numbers.ranged("estimate.handling"));
    }
}
