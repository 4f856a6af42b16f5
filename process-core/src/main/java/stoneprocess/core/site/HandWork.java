package stoneprocess.core.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Repair;

/** Hours of one technician with a hand tool. */
record HandWork(Parameters parameters) {
    /** The disc of the hand tool; a running metre of edge is a strip as wide. */
    private static final double DISC_METRES = 0.125;

    private static final Map<Repair, DamageKind> DAMAGE = Map.of(
            Repair.LOCAL_SCRATCHES, DamageKind.SCRATCHES,
            Repair.LOCAL_ETCHES, DamageKind.ETCHES,
            Repair.DEEP_ETCHES, DamageKind.ETCHES);

    /** One grade along the edges, by {@code estimate.edges}. */
    Range<TimeSpan> along(Length edges) {
        return over(edges.millimetres() / 1000, edges.millimetres() / 1000, 1);
    }

    /** One grade over an area, as a strip as long as the area over the disc's width. */
    Range<TimeSpan> over(Area area) {
        return over(area.squareMetres() / DISC_METRES, area.squareMetres() / DISC_METRES, 1);
    }

    /** All grades over the places of a repair. */
    Range<TimeSpan> over(Range<Area> places, int grades) {
        return over(places.low().squareMetres() / DISC_METRES, places.high().squareMetres() / DISC_METRES, grades);
    }

    private Range<TimeSpan> over(double leastMetres, double mostMetres, int grades) {
        Range<Speed> rate = parameters.range("estimate.edges", Speed.class);
        if (rate.low().kept() == 0) {
            throw new InvalidInputException("estimate.edges.low", rate.low().print(), "more than zero");
        }
        return Range.of(
                new TimeSpan(grades * leastMetres / rate.high().kept()),
                new TimeSpan(grades * mostMetres / rate.low().kept()));
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
