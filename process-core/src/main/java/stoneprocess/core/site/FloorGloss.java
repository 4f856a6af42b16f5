package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GeometryAdvice;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.gloss.GritPrior;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.ReadingSet;
import stoneprocess.core.gloss.SetAside;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.topic.TrackKind;

/**
 * What a floor reads, what its stone could read and what its plan would bring in the open field.
 *
 * @param ceilings what each family that the stone may be reads when perfectly smooth
 * @param withoutCeiling the families of which no ceiling is known
 * @param zones what the survey read, zone by zone, in its order
 * @param setAside readings on wet or soiled faces
 * @param coated whether the survey names a film on the surface, so that its readings are the film's
 * @param zone the zone that is forecast; empty when none was asked for and none of the open field was read
 * @param holdPoints what was read between the grits
 * @param needed how many readings are worth taking in the zones that were read at 60 degrees
 * @param target what is to be reached; empty for a hone and where no finish is decided
 * @param obstacles what stands in the way of a forecast
 * @param planned the forecast; empty when something stands in the way
 */
public record FloorGloss(
        Map<Family, GlossCeiling> ceilings,
        Set<Family> withoutCeiling,
        List<ZoneGloss> zones,
        List<SetAside> setAside,
        boolean coated,
        Optional<String> zone,
        List<HoldPointGloss> holdPoints,
        List<ReadingsNeeded> needed,
        Optional<GlossTarget> target,
        Set<NoForecast> obstacles,
        Optional<PlannedGloss> planned) {
    private static final Set<ZoneKind> OPEN_FIELD = Set.of(ZoneKind.LANE, ZoneKind.FIELD, ZoneKind.ENTRANCE);

    public FloorGloss {
        Refuse.nulls(
                FloorGloss.class,
                ceilings,
                withoutCeiling,
                zones,
                setAside,
                zone,
                holdPoints,
                needed,
                target,
                obstacles,
                planned);
        ceilings = Collections.unmodifiableMap(new LinkedHashMap<>(ceilings));
        withoutCeiling = KnownStone.inOrder(withoutCeiling);
        zones = List.copyOf(zones);
        setAside = List.copyOf(setAside);
        holdPoints = List.copyOf(holdPoints);
        needed = List.copyOf(needed);
    }

    /**
     * The answer to a question.
     *
     * @param recommendation a recommendation, with or without a plan
     * @param question what is asked beside the survey
     * @throws InvalidInputException naming the field of the question: a zone that the survey has not, a half width that
     *     asks for more readings than anybody takes, hold points that no job can have
     */
    public static FloorGloss of(Recommendation recommendation, GlossQuestion question) {
        return new Maker(recommendation, question).make();
    }

    private static final class Maker {
        private final Recommendation recommendation;
        private final GlossQuestion question;
        private final Parameters parameters;
        private final KnownStone stone;
        private final Share confidence;
        private final List<Reading> readings;
        private final Optional<String> zone;

        Maker(Recommendation recommendation, GlossQuestion question) {
            this.recommendation = recommendation;
            this.question = question;
            this.parameters = recommendation.parameters();
            this.stone = KnownStone.of(recommendation);
            this.confidence = parameters.get("gloss-gain.confidence", Share.class);
            this.readings = readings(recommendation.survey().readings());
            this.zone = question.zone().map(this::surveyed).or(this::dullest);
        }

        private static List<Reading> readings(List<GlossReading> surveyed) {
            List<Reading> readings = new ArrayList<>();
            for (GlossReading reading : surveyed) {
                readings.add(new Reading(
                        "reading " + (readings.size() + 1),
                        reading.zone(),
                        Direction.NOT_NOTED,
                        reading.geometry(),
                        reading.gloss(),
                        state(reading.state())));
            }
            return readings;
        }

        private static FaceState state(SurfaceState state) {
            return switch (state) {
                case CLEAN_DRY -> FaceState.CLEAN_DRY;
                case WET -> FaceState.WET;
                case SOILED -> FaceState.SOILED;
            };
        }

        private String surveyed(String asked) {
            List<String> names =
                    recommendation.survey().zones().stream().map(Zone::name).toList();
            if (!names.contains(asked)) {
                throw new InvalidInputException(
                        "zone",
                        asked,
                        names.isEmpty() ? "no zone, since the survey has none" : "one of " + String.join(", ", names));
            }
            return asked;
        }

        /** The dullest zone of the open field among those that were read at 60 degrees. */
        private Optional<String> dullest() {
            return recommendation.survey().zones().stream()
                    .filter(surveyed -> OPEN_FIELD.contains(surveyed.kind()))
                    .map(Zone::name)
                    .filter(name -> level(name).isPresent())
                    .min(Comparator.comparing(name -> level(name).orElseThrow().mean()));
        }

        private Optional<LevelReading> level(String name) {
            return FloorForecast.level(recommendation, 0, FloorForecast.read(recommendation, name));
        }

        FloorGloss make() {
            Optional<GlossTarget> target = question.target()
                    .map(gloss -> new GlossTarget(gloss, Optional.empty()))
                    .or(() -> GlossTarget.of(recommendation));
            Set<NoForecast> obstacles = FloorForecast.obstacles(recommendation, TrackKind.OPEN_FIELD);
            return new FloorGloss(
                    stone.ceilings(),
                    stone.withoutCeiling(),
                    recommendation.survey().zones().stream()
                            .map(surveyed -> zone(surveyed.name()))
                            .toList(),
                    ReadingSet.of(readings, Geometry.DEG_60).setAside().stream()
                            .filter(aside -> aside.reason() != SetAside.Reason.OTHER_GEOMETRY)
                            .toList(),
                    FloorForecast.coated(recommendation),
                    zone,
                    holdPoints(),
                    needed(),
                    target,
                    obstacles,
                    obstacles.isEmpty() ? Optional.of(PlannedGloss.of(forecast(), target)) : Optional.empty());
        }

        private FloorForecast forecast() {
            return FloorForecast.of(
                    recommendation,
                    TrackKind.OPEN_FIELD,
                    zone.flatMap(name -> FloorForecast.start(recommendation, TrackKind.OPEN_FIELD, name)),
                    stages());
        }

        /** Hold points of one grit in a row are one stage. */
        private List<GritStage> stages() {
            List<GritStage> stages = new ArrayList<>();
            TrackIntensity intensity = new TrackIntensity(recommendation, TrackKind.OPEN_FIELD);
            for (GritDone holdPoint : question.done()) {
                List<LevelReading> levels = new ArrayList<>();
                int passes = holdPoint.passes();
                if (!stages.isEmpty() && stages.get(stages.size() - 1).grit() == holdPoint.grit()) {
                    GritStage before = stages.remove(stages.size() - 1);
                    levels.addAll(before.readings());
                    passes = Math.max(passes, before.passes());
                }
                FloorForecast.level(recommendation, holdPoint.passes(), holdPoint.reads())
                        .ifPresent(levels::add);
                stages.add(new GritStage(holdPoint.grit(), passes, intensity.ofResin(holdPoint.grit()), levels));
            }
            return stages;
        }

        private ZoneGloss zone(String name) {
            List<AngleGloss> angles = Arrays.stream(Geometry.values())
                    .filter(geometry -> !values(name, geometry).isEmpty())
                    .map(geometry -> angle(values(name, geometry), geometry))
                    .toList();
            return new ZoneGloss(
                    name,
                    angles,
                    angles.stream()
                            .filter(angle -> angle.geometry() == Geometry.DEG_60)
                            .findFirst()
                            .map(angle -> GeometryAdvice.best(angle.statistics().mean(), parameters)));
        }

        private List<Gloss> values(String name, Geometry geometry) {
            return ReadingSet.of(readings, geometry).valuesByZone().getOrDefault(name, List.of());
        }

        private AngleGloss angle(List<Gloss> values, Geometry geometry) {
            ZoneStatistics statistics = ZoneStatistics.of(values, confidence);
            List<Gloss> impossible = values.stream()
                    .filter(gloss -> isOver(gloss, geometry, stone.highestCeiling()))
                    .toList();
            Set<Family> excluded = new TreeSet<>();
            stone.ceilings().forEach((family, ceiling) -> {
                if (impossible.isEmpty() && values.stream().anyMatch(gloss -> isOver(gloss, geometry, ceiling))) {
                    excluded.add(family);
                }
            });
            return new AngleGloss(
                    geometry,
                    statistics,
                    statistics.meanInterval().map(interval -> upToCeiling(interval, geometry)),
                    impossible,
                    excluded);
        }

        private boolean isOver(Gloss gloss, Geometry geometry, GlossCeiling ceiling) {
            return GlossCheck.of(gloss, geometry, ceiling, parameters).suspicion() == GlossSuspicion.OVER_CEILING;
        }

        /** No mean lies over the ceiling, however wide few readings make the interval. */
        private Range<Gloss> upToCeiling(Range<Gloss> interval, Geometry geometry) {
            Gloss most = stone.highestCeiling().at(geometry);
            boolean cut = interval.low().compareTo(most) < 0 && interval.high().compareTo(most) > 0;
            return cut ? Range.of(interval.low(), most) : interval;
        }

        private List<HoldPointGloss> holdPoints() {
            List<HoldPointGloss> holdPoints = new ArrayList<>();
            List<Gloss> before = zone.filter(name -> !FloorForecast.coated(recommendation))
                    .map(name -> FloorForecast.read(recommendation, name))
                    .orElse(List.of());
            for (GritDone done : question.done()) {
                holdPoints.add(holdPoint(done, before));
                before = done.reads().isEmpty() ? before : done.reads();
            }
            return holdPoints;
        }

        private HoldPointGloss holdPoint(GritDone done, List<Gloss> before) {
            boolean read = !done.reads().isEmpty();
            Optional<Range<Gloss>> usual = usual(done.grit());
            List<Gloss> overGrit = new ArrayList<>();
            Set<Film> films = new TreeSet<>();
            for (Gloss gloss : usual.isPresent() ? done.reads() : List.<Gloss>of()) {
                GlossCheck check =
                        GlossCheck.of(gloss, Geometry.DEG_60, stone.highestCeiling(), usual.orElseThrow(), parameters);
                if (check.suspicion() == GlossSuspicion.FILM) {
                    overGrit.add(gloss);
                    films.addAll(check.films());
                }
            }
            return new HoldPointGloss(
                    done,
                    read ? Optional.of(angle(done.reads(), Geometry.DEG_60)) : Optional.empty(),
                    read && !before.isEmpty()
                            ? Optional.of(Gain.of(before, done.reads(), parameters))
                            : Optional.empty(),
                    usual.map(Range::high),
                    overGrit,
                    films);
        }

        private Optional<Range<Gloss>> usual(int grit) {
            Hardness hardness = stone.hardness().iterator().next();
            return stone.hardness().size() > 1 || !GritPrior.CLASSES.contains(hardness)
                    ? Optional.empty()
                    : Optional.of(GritPrior.of(hardness, grit, stone.highestCeiling(), parameters)
                            .interval(parameters.get("gloss-film.level", Share.class)));
        }

        private List<ReadingsNeeded> needed() {
            List<ReadingsNeeded> needed = new ArrayList<>();
            ReadingSet.of(readings, Geometry.DEG_60).valuesByZone().forEach((name, values) -> {
                ZoneStatistics statistics = ZoneStatistics.of(values, confidence);
                Gloss deviation = statistics.deviation().orElseGet(() -> usualScatter(statistics.mean()));
                int most =
                        (int) parameters.get("gloss-readings.most", Count.class).number();
                int number = Math.min(most, number(deviation));
                Gloss shows = ZoneStatistics.halfWidth(deviation, Math.max(number, values.size()), confidence);
                needed.add(new ReadingsNeeded(
                        name,
                        number,
                        shows,
                        shows.compareTo(question.within()) <= 0,
                        deviation,
                        statistics.count(),
                        statistics.deviation().isPresent()));
            });
            return needed;
        }

        private int number(Gloss deviation) {
            try {
                return ZoneStatistics.readingsNeeded(deviation, question.within(), confidence);
            } catch (InvalidInputException e) {
                throw new InvalidInputException("within", e.value(), e.accepted());
            }
        }

        private Gloss usualScatter(Gloss mean) {
            double share = parameters.part("gloss-reading.scatter");
            double least =
                    parameters.get("gloss-reading.least-scatter", Gloss.class).gloss();
            return new Gloss(Math.max(least, share * mean.gloss()));
        }
    }
}
