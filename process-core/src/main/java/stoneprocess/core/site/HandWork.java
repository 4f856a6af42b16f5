package stoneprocess.core.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Task;

/** Hours of one technician with a hand tool. */
record HandWork(CuttingClass stone, Parameters parameters) {
    private static final Map<Repair, DamageKind> REPAIRED = Map.of(
            Repair.LOCAL_SCRATCHES, DamageKind.SCRATCHES,
            Repair.POWDER_FIRST, DamageKind.ETCHES,
            Repair.LOCAL_ETCHES, DamageKind.ETCHES,
            Repair.DEEP_ETCHES, DamageKind.ETCHES,
            Repair.LOCAL_LIPPAGE, DamageKind.LIPPAGE);

    private static final Map<Task, DamageKind> TREATED = Map.of(
            Task.POULTICE_OIL, DamageKind.OIL_STAINS,
            Task.POULTICE_ORGANIC, DamageKind.ORGANIC_STAINS,
            Task.POULTICE_RUST, DamageKind.RUST_STAINS,
            Task.DRY_CLEAN_SALTS, DamageKind.SALTS,
            Task.FILL_CRACKS, DamageKind.CRACKS,
            Task.RELAY_LIPPED, DamageKind.LIPPAGE);

    /** The damage that a repair mends in its places; empty for work on the test area. */
    static Optional<DamageKind> damage(Repair repair) {
        return Optional.ofNullable(REPAIRED.get(repair));
    }

    /** The damage that a task treats in its places; empty for work on the whole floor. */
    static Optional<DamageKind> damage(Task task) {
        return Optional.ofNullable(TREATED.get(task));
    }

    /** One grade along the edges: its passes at the speed of the hand tool, {@code estimate.hand}. */
    Range<TimeSpan> along(Range<Length> edges, PlannedStep step) {
        return Range.of(
                passes(edges.low().millimetres() / 1000, middle(step)).low(),
                passes(edges.high().millimetres() / 1000, middle(step)).high());
    }

    /** One grade over an area, as a strip of {@code estimate.hand-strip}. */
    Range<TimeSpan> over(Area area, PlannedStep step) {
        return passes(strip(area), middle(step));
    }

    /** All grades over the places of a repair, and the time to tape, wet and clean around them. */
    Range<TimeSpan> over(Range<Area> places, List<PlannedStep> grades) {
        double passes = grades.stream().mapToDouble(HandWork::middle).sum();
        Range<TimeSpan> around = parameters.range("estimate.place", TimeSpan.class);
        return Range.of(
                new TimeSpan(passes(strip(places.low()), passes).low().minutes()
                        + around.low().minutes()),
                new TimeSpan(passes(strip(places.high()), passes).high().minutes()
                        + around.high().minutes()));
    }

    private static double middle(PlannedStep step) {
        return (step.passes().low() + step.passes().high()) / 2.0;
    }

    private double strip(Area area) {
        return area.squareMetres()
                * 1000
                / parameters.get("estimate.hand-strip", Length.class).millimetres();
    }

    private Range<TimeSpan> passes(double metres, double passes) {
        Range<Speed> speed = parameters.range("estimate.hand", Speed.class);
        if (speed.low().kept() == 0) {
            throw new InvalidInputException("estimate.hand.low", speed.low().print(), "more than zero");
        }
        double slowed = metres * passes / parameters.part(stone.walkParameter());
        return Range.of(
                new TimeSpan(slowed / speed.high().kept()),
                new TimeSpan(slowed / speed.low().kept()));
    }

    /** Places at a rate by their area, and the time to tape, wet and clean around them. */
    Range<TimeSpan> at(String rate, Range<Area> places) {
        Range<AreaRate> rates = parameters.range(rate, AreaRate.class);
        if (rates.low().kept() == 0) {
            throw new InvalidInputException(rate + ".low", rates.low().print(), "more than zero");
        }
        Range<TimeSpan> around = parameters.range("estimate.place", TimeSpan.class);
        return Range.of(
                new TimeSpan(60 * places.low().squareMetres() / rates.high().kept()
                        + around.low().minutes()),
                new TimeSpan(60 * places.high().squareMetres() / rates.low().kept()
                        + around.high().minutes()));
    }

    /** The number of pieces in the places, at least one, not rounded: the fewest are the largest. */
    Range<Double> pieces(Range<Area> places) {
        Range<Area> size = parameters.range("estimate.place-size", Area.class);
        if (size.low().kept() == 0) {
            throw new InvalidInputException(
                    "estimate.place-size.low", size.low().print(), "more than zero");
        }
        return Range.of(
                Math.max(1, places.low().kept() / size.high().kept()),
                Math.max(1, places.high().kept() / size.low().kept()));
    }

    /** Each piece for the hours of a piece. */
    Range<TimeSpan> pieces(String hours, Range<Double> pieces) {
        Range<TimeSpan> each = parameters.range(hours, TimeSpan.class);
        return Range.of(
                new TimeSpan(pieces.low() * each.low().minutes()),
                new TimeSpan(pieces.high() * each.high().minutes()));
    }

    /** The places of the worst damage of a kind, or of all pieces that stand proud, when a survey tells them all. */
    Optional<Area> told(DamageKind kind, FloorSurvey survey, Area floor) {
        int worst = worst(kind, survey);
        int least = kind == DamageKind.LIPPAGE ? Math.min(worst, LippageClass.MODERATE.ordinal()) : worst;
        double percent = 0;
        for (Zone zone : survey.zones()) {
            if (least > 0 && severity(zone, kind) >= least) {
                Optional<Share> share = zone.damage(kind).value().flatMap(Damage::share);
                if (share.isEmpty()) {
                    return Optional.empty();
                }
                percent += zone.share().percent() * share.get().percent() / 100;
            }
        }
        return percent == 0 ? Optional.empty() : Optional.of(new Area(floor.squareMetres() * percent / 100));
    }

    /** From no place to the share from which damage governs the floor, {@code local-repair.area}. */
    Range<Area> upToLimit(Area floor) {
        double share = parameters.part("local-repair.area");
        return Range.of(new Area(0), new Area(floor.squareMetres() * share));
    }

    /** How bad the worst damage of a kind is, 0 for none. */
    int worst(DamageKind kind, FloorSurvey survey) {
        return survey.zones().stream()
                .mapToInt(zone -> severity(zone, kind))
                .max()
                .orElse(0);
    }

    private int severity(Zone zone, DamageKind kind) {
        return zone.damage(kind)
                .value()
                .map(damage -> damage.severity(parameters))
                .orElse(0);
    }
}
