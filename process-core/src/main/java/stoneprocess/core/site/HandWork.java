package stoneprocess.core.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Repair;

/** Hours of one technician with a hand tool. */
record HandWork(CuttingClass stone, Parameters parameters) {
    private static final Map<Repair, DamageKind> DAMAGE = Map.of(
            Repair.LOCAL_SCRATCHES, DamageKind.SCRATCHES,
            Repair.LOCAL_ETCHES, DamageKind.ETCHES,
            Repair.DEEP_ETCHES, DamageKind.ETCHES);

    /** One grade along the edges: its passes at the speed of the hand tool, {@code estimate.hand}. */
    Range<TimeSpan> along(Length edges, PlannedStep step) {
        return passes(edges.millimetres() / 1000, middle(step));
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

    /** Whether a repair is cut over places with an area of their own; raised edges are not. */
    static boolean hasArea(Repair repair) {
        return DAMAGE.containsKey(repair);
    }

    /**
     * The places of a repair: the shares of the zones that have the worst damage of its kind, when the survey tells them
     * all.
     */
    Optional<Area> surveyed(Repair repair, FloorSurvey survey, Area floor) {
        List<Zone> hit = survey.zones().stream()
                .filter(zone -> severity(zone, repair) > 0)
                .toList();
        int worst = hit.stream().mapToInt(zone -> severity(zone, repair)).max().orElse(0);
        double percent = 0;
        for (Zone zone : hit) {
            if (severity(zone, repair) == worst) {
                Optional<Share> share = damage(zone, repair).flatMap(Damage::share);
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

    private int severity(Zone zone, Repair repair) {
        return damage(zone, repair).map(damage -> damage.severity(parameters)).orElse(0);
    }

    private static Optional<Damage> damage(Zone zone, Repair repair) {
        return Optional.ofNullable(DAMAGE.get(repair))
                .flatMap(kind -> Optional.ofNullable(zone.damages().get(kind)));
    }
}
