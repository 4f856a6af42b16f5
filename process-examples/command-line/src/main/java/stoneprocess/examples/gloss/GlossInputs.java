package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.gloss.PlannedGrit;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.ReadingSet;
import stoneprocess.core.gloss.WorkSoFar;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Step;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.site.GlossTarget;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;

/**
 * A survey and the plan made for it in the records of the gloss room.
 *
 * @param recommendation the plan with its survey
 * @param readings the survey's readings, in its order
 */
public record GlossInputs(Recommendation recommendation, List<Reading> readings) {
    private static final Set<Coating> FILMS =
            Set.of(Coating.WAX, Coating.ACRYLIC, Coating.URETHANE, Coating.EPOXY, Coating.CRYSTALLISED);

    /** The coarsest number that {@link stoneprocess.core.gloss.GritPrior} knows. */
    private static final int COARSEST_LISTED = 30;

    /** So many passes that nothing is left of the face before. */
    private static final int GROUND_AWAY = 1000;

    private static final Set<ZoneKind> OPEN_FIELD = Set.of(ZoneKind.LANE, ZoneKind.FIELD, ZoneKind.ENTRANCE);

    public GlossInputs {
        readings = List.copyOf(readings);
    }

    /** Reads a recommendation. */
    public static GlossInputs of(Recommendation recommendation) {
        List<Reading> readings = new ArrayList<>();
        for (GlossReading reading : recommendation.survey().readings()) {
            readings.add(new Reading(
                    "reading " + (readings.size() + 1),
                    reading.zone(),
                    Direction.NOT_NOTED,
                    reading.geometry(),
                    reading.gloss(),
                    state(reading.state())));
        }
        return new GlossInputs(recommendation, readings);
    }

    private static FaceState state(SurfaceState state) {
        return switch (state) {
            case CLEAN_DRY -> FaceState.CLEAN_DRY;
            case WET -> FaceState.WET;
            case SOILED -> FaceState.SOILED;
        };
    }

    private FloorSurvey survey() {
        return recommendation.survey();
    }

    private Parameters parameters() {
        return recommendation.parameters();
    }

    /** The stone, its ceilings and hardness. */
    public KnownStone stone() {
        return KnownStone.of(recommendation);
    }

    /** True when the survey names a film on the face. */
    public boolean coated() {
        return survey().answer(SurveyField.COATING)
                .value()
                .filter(FILMS::contains)
                .isPresent();
    }

    /** All that stands in the way of a forecast; empty when there can be one. */
    public Set<NoForecast> obstacles() {
        EnumSet<NoForecast> obstacles = EnumSet.noneOf(NoForecast.class);
        if (recommendation.plan().isEmpty()) {
            obstacles.add(NoForecast.NO_PLAN);
        } else if (field().isEmpty()) {
            obstacles.add(NoForecast.FIELD_NOT_CUT);
        } else if (resin().isEmpty()) {
            obstacles.add(NoForecast.NO_RESIN_GRIT);
        }
        if (survey().answer(SurveyField.MIX).value().equals(Optional.of(StoneMix.MIXED_HARDNESS))) {
            obstacles.add(NoForecast.MIXED);
        }
        Set<Hardness> hardness = stone().hardness();
        if (stone().machineMade()) {
            obstacles.add(NoForecast.MACHINE_MADE);
        } else if (hardness.size() > 1 || stone().mayBeMachineMade()) {
            obstacles.add(NoForecast.UNKNOWN_STONE);
        } else if (hardness.contains(Hardness.SOFT)) {
            obstacles.add(NoForecast.SOFT);
        }
        return obstacles;
    }

    /** The steps of the open field; none where it is not cut. */
    public List<Step> field() {
        return recommendation.plan().stream()
                .map(Plan::tracks)
                .flatMap(List::stream)
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .flatMap(track -> track.steps().stream())
                .toList();
    }

    private List<Step> resin() {
        return field().stream()
                .filter(step -> step.grade().bond() == Bond.RESIN)
                .toList();
    }

    /**
     * The metal and transition grits that go first, as far as the gloss room lists such numbers, each as the resin grit
     * of its number, which leaves no less gloss, and run to its end, since they grind the old face away; none once a grit is done. One that the next step repeats is left out.
     */
    public List<PlannedGrit> coarserFirst(List<GritDone> done) {
        List<PlannedGrit> coarser = new ArrayList<>();
        List<Step> steps = field();
        for (int i = 0; done.isEmpty() && i + 1 < steps.size(); i++) {
            AbrasiveGrade grade = steps.get(i).grade();
            boolean repeated = steps.get(i + 1).grade().number() == grade.number();
            if (grade.bond() != Bond.RESIN && grade.number() >= COARSEST_LISTED && !repeated) {
                coarser.add(new PlannedGrit(grade.number(), GROUND_AWAY));
            }
        }
        return coarser;
    }

    /** The resin grits that remain after the work done, each with the fewer of the plan's passes. */
    public List<PlannedGrit> remaining(List<GritDone> done) {
        int last = done.isEmpty() ? 0 : done.get(done.size() - 1).grit();
        int passes = done.isEmpty() ? 0 : done.get(done.size() - 1).passes();
        List<PlannedGrit> remaining = new ArrayList<>();
        for (Step step : resin()) {
            int grit = step.grade().number();
            int left = step.passes().low() - (grit == last ? passes : 0);
            if (grit > last || (grit == last && left > 0)) {
                remaining.add(new PlannedGrit(grit, left));
            }
        }
        return remaining;
    }

    /** The resin grits of the sequence in use that are finer than a grit, with as many passes as the plan's last. */
    public List<PlannedGrit> finer(int grit) {
        List<Step> steps = resin();
        int passes = steps.get(steps.size() - 1).passes().low();
        return recommendation.sequence().grades(Bond.RESIN).stream()
                .map(AbrasiveGrade::number)
                .filter(number -> number > grit)
                .map(number -> new PlannedGrit(number, passes))
                .toList();
    }

    /**
     * The zone to forecast: the one asked for, else the dullest of the open field at 60 degrees; empty when none is
     * read.
     */
    public Optional<String> zone(Optional<String> asked) {
        List<String> names = survey().zones().stream().map(Zone::name).toList();
        if (asked.isPresent() && !names.contains(asked.get())) {
            throw new InvalidInputException(
                    "--zone",
                    asked.get(),
                    names.isEmpty() ? "no zone, since the survey has none" : "one of " + String.join(", ", names));
        }
        return asked.or(() -> survey().zones().stream()
                .filter(zone -> OPEN_FIELD.contains(zone.kind()))
                .map(Zone::name)
                .filter(zone -> start(zone).isPresent())
                .min(Comparator.comparing(zone -> start(zone).orElseThrow().mean())));
    }

    /** The readings of a zone at 60 degrees that tell of the stone. */
    public ReadingSet usable(String zone) {
        return possible(
                readings.stream().filter(reading -> reading.zone().equals(zone)).toList());
    }

    private ReadingSet possible(List<Reading> some) {
        return ReadingSet.of(
                some.stream()
                        .filter(reading -> reading.geometry() != Geometry.DEG_60
                                || GlossCheck.of(
                                                        reading.gloss(),
                                                        Geometry.DEG_60,
                                                        stone().lowestCeiling(),
                                                        parameters())
                                                .suspicion()
                                        == GlossSuspicion.NONE)
                        .toList(),
                Geometry.DEG_60);
    }

    private Optional<LevelReading> start(String zone) {
        ReadingSet set = usable(zone);
        return set.used().isEmpty() ? Optional.empty() : Optional.of(LevelReading.of(0, set));
    }

    /** The readings of a hold point as readings of a zone. */
    public static List<Reading> readings(GritDone done, String zone) {
        List<Reading> readings = new ArrayList<>();
        for (Gloss gloss : done.reads()) {
            readings.add(new Reading(
                    "reading " + (readings.size() + 1),
                    zone,
                    Direction.NOT_NOTED,
                    Geometry.DEG_60,
                    gloss,
                    FaceState.CLEAN_DRY));
        }
        return readings;
    }

    /**
     * The work so far on a zone. The survey's readings count as the start unless a film lies on the face
     * or coarser bonds grind it away; readings that the stone cannot show are left out.
     */
    public WorkSoFar work(Optional<String> zone, List<GritDone> done) {
        Optional<LevelReading> start =
                coated() || !coarserFirst(done).isEmpty() ? Optional.empty() : zone.flatMap(this::start);
        return new WorkSoFar(stone().hardness().iterator().next(), stone().lowestCeiling(), start, stages(done));
    }

    /** Hold points of one grit in a row are one stage. */
    private List<GritStage> stages(List<GritDone> done) {
        List<GritStage> stages = new ArrayList<>();
        for (GritDone one : done) {
            ReadingSet set = possible(readings(one, "open field"));
            List<LevelReading> levels = new ArrayList<>();
            int passes = one.passes();
            if (!stages.isEmpty() && stages.get(stages.size() - 1).grit() == one.grit()) {
                GritStage before = stages.remove(stages.size() - 1);
                levels.addAll(before.readings());
                passes = Math.max(passes, before.passes());
            }
            if (!set.used().isEmpty()) {
                levels.add(LevelReading.of(one.passes(), set));
            }
            stages.add(new GritStage(one.grit(), passes, levels));
        }
        return stages;
    }

    /** What is to be reached; empty for a hone, which has no lower limit, and where no finish is decided. */
    public Optional<GlossTarget> target(Optional<Gloss> asked) {
        if (asked.isPresent()) {
            return Optional.of(new GlossTarget(asked.get(), Optional.empty()));
        }
        return GlossTarget.of(recommendation);
    }
}
