package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossForecast;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.gloss.GritPrior;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.gloss.OldDamage;
import stoneprocess.core.gloss.PlannedGrit;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.WorkSoFar;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;

/**
 * What the rest of a plan will bring on one zone, in gloss at 60 degrees. The stone, its ceiling, the grits that remain
 * and their passes are taken from the plan: the fewer of the planned passes, since a promise holds for a crew that makes
 * no more. Who asks before the work and who asks at a hold point gets the same figures for the same work. Immutable.
 */
public final class FloorForecast {
    private static final Set<Coating> FILMS =
            Set.of(Coating.WAX, Coating.ACRYLIC, Coating.URETHANE, Coating.EPOXY, Coating.CRYSTALLISED);

    /** So many passes that nothing is left of the surface before. */
    private static final int GROUND_AWAY = 1000;

    private final Recommendation recommendation;
    private final List<PlannedStep> steps;
    private final List<GritStage> done;
    private final WorkSoFar work;
    private final StartDepths depths;
    private final TrackIntensity intensity;
    private final GlossForecast forecast;

    private FloorForecast(Recommendation recommendation, TrackKind track, WorkSoFar work) {
        this.recommendation = recommendation;
        this.steps = recommendation.steps(track);
        this.intensity = new TrackIntensity(recommendation, track);
        this.done = work.stages();
        this.work = work;
        this.depths = new StartDepths(recommendation, steps);
        this.forecast = GlossForecast.of(work, otherStart(), recommendation.parameters());
    }

    /** What the work so far takes off when it began with another resin grit than the plan does; empty when not. */
    private Optional<OldDamage> otherStart() {
        int planned = resin(steps).get(0).grade().number();
        int coarsest = done.stream().mapToInt(GritStage::grit).min().orElse(planned);
        return depths.damage().filter(damage -> coarsest != planned).map(damage -> depths.fromResin(damage, coarsest));
    }

    /**
     * The forecast of one zone.
     *
     * @param recommendation the plan
     * @param track the part of the floor that the zone belongs to
     * @param start what the zone read before the first resin pass, see {@link #start}; empty when nobody read it or what
     *     it read is ground away
     * @param done resin grits worked on it since, in their order; readings as {@link #level} gives them
     * @throws InvalidInputException when something stands in the way, naming it, see {@link #obstacles}; and for work
     *     that {@link WorkSoFar} refuses
     */
    public static FloorForecast of(
            Recommendation recommendation, TrackKind track, Optional<LevelReading> start, List<GritStage> done) {
        Set<NoForecast> obstacles = obstacles(recommendation, track);
        if (!obstacles.isEmpty()) {
            throw new InvalidInputException(
                    "forecast", obstacles.iterator().next().key(), "a floor whose gloss can be foretold");
        }
        KnownStone stone = KnownStone.of(recommendation);
        return new FloorForecast(
                recommendation,
                track,
                new WorkSoFar(stone.hardness().iterator().next(), stone.lowestCeiling(), start, done));
    }

    /** All that stands in the way of a forecast of a part of the floor; empty when there can be one. */
    public static Set<NoForecast> obstacles(Recommendation recommendation, TrackKind track) {
        Objects.requireNonNull(track, "track");
        EnumSet<NoForecast> obstacles = EnumSet.noneOf(NoForecast.class);
        if (recommendation.plan().isEmpty()) {
            obstacles.add(NoForecast.NO_PLAN);
        } else if (recommendation.steps(track).isEmpty()) {
            obstacles.add(NoForecast.FIELD_NOT_CUT);
        } else if (resin(recommendation.steps(track)).isEmpty()) {
            obstacles.add(NoForecast.NO_RESIN_GRIT);
        }
        if (recommendation.survey().answer(SurveyField.MIX).value().equals(Optional.of(StoneMix.MIXED_HARDNESS))) {
            obstacles.add(NoForecast.MIXED);
        }
        KnownStone stone = KnownStone.of(recommendation);
        Set<Hardness> hardness = stone.hardness();
        if (stone.machineMade()) {
            obstacles.add(NoForecast.MACHINE_MADE);
        } else if (hardness.size() > 1 || stone.mayBeMachineMade()) {
            obstacles.add(NoForecast.UNKNOWN_STONE);
        } else if (hardness.contains(Hardness.SOFT)) {
            obstacles.add(NoForecast.SOFT);
        }
        return Collections.unmodifiableSet(obstacles);
    }

    private static List<PlannedStep> resin(List<PlannedStep> steps) {
        return steps.stream().filter(step -> step.grade().bond() == Bond.RESIN).toList();
    }

    /** Whether the survey names a film on the surface, whose gloss is not the stone's. */
    public static boolean coated(Recommendation recommendation) {
        return recommendation
                .survey()
                .answer(SurveyField.COATING)
                .value()
                .filter(FILMS::contains)
                .isPresent();
    }

    /**
     * What the survey read in a zone, as the start of the work; empty where it was not read clean and dry at 60 degrees,
     * where a film lies on it and where the plan grinds the old surface away before the first resin grit.
     */
    public static Optional<LevelReading> start(Recommendation recommendation, TrackKind track, String zone) {
        Objects.requireNonNull(zone, "zone");
        boolean ground = recommendation.steps(Objects.requireNonNull(track, "track")).stream()
                .anyMatch(step -> step.grade().bond() != Bond.RESIN);
        return ground || coated(recommendation)
                ? Optional.empty()
                : level(recommendation, 0, read(recommendation, zone));
    }

    /** What the survey read in a zone, clean and dry at 60 degrees, without what the stone cannot show. */
    public static List<Gloss> read(Recommendation recommendation, String zone) {
        Objects.requireNonNull(zone, "zone");
        return possible(
                recommendation,
                recommendation.survey().readings().stream()
                        .filter(reading -> reading.zone().equals(zone)
                                && reading.geometry() == Geometry.DEG_60
                                && reading.state() == SurfaceState.CLEAN_DRY)
                        .map(GlossReading::gloss)
                        .toList());
    }

    /** The readings that the lowest ceiling of what the stone may be can show. */
    private static List<Gloss> possible(Recommendation recommendation, List<Gloss> readings) {
        KnownStone stone = KnownStone.of(recommendation);
        return readings.stream()
                .filter(gloss ->
                        GlossCheck.of(gloss, Geometry.DEG_60, stone.lowestCeiling(), recommendation.parameters())
                                        .suspicion()
                                == GlossSuspicion.NONE)
                .toList();
    }

    /**
     * Readings of one zone at one moment as their mean, without what the stone cannot show; empty when none is left.
     *
     * @param passes passes of the grit in work done by then
     * @param readings clean and dry, at 60 degrees
     */
    public static Optional<LevelReading> level(Recommendation recommendation, int passes, List<Gloss> readings) {
        List<Gloss> possible = possible(recommendation, readings);
        return possible.isEmpty()
                ? Optional.empty()
                : Optional.of(new LevelReading(
                        passes,
                        new Gloss(possible.stream().mapToDouble(Gloss::gloss).sum() / possible.size()),
                        possible.size()));
    }

    /**
     * The metal and transition grits that go first, in the plan's order; none once a grit is done. They are reckoned as
     * the resin grit of their number, which leaves no less gloss, run to its end, since they grind the old surface away.
     * Left out are numbers that cannot be foretold, and one that the next step repeats.
     */
    public List<AbrasiveGrade> coarserFirst() {
        return done.isEmpty() ? coarserBonds() : List.of();
    }

    private List<AbrasiveGrade> coarserBonds() {
        List<AbrasiveGrade> coarser = new ArrayList<>();
        for (int i = 0; i + 1 < steps.size(); i++) {
            AbrasiveGrade grade = steps.get(i).grade();
            boolean repeated = steps.get(i + 1).grade().number() == grade.number();
            if (grade.bond() != Bond.RESIN
                    && GritPrior.covers(grade.number(), recommendation.parameters())
                    && !repeated) {
                coarser.add(grade);
            }
        }
        return List.copyOf(coarser);
    }

    /** The resin grits that remain, with the passes that remain of them. */
    public List<PlannedGrit> remaining() {
        int inWork = done.isEmpty() ? 0 : done.get(done.size() - 1).grit();
        List<PlannedGrit> remaining = new ArrayList<>();
        for (PlannedStep step : resin(steps)) {
            int grit = step.grade().number();
            PlannedGrit whole = planned(step);
            int left = grit == inWork ? whole.passesAfter(done.get(done.size() - 1)) : whole.passes();
            if (grit > inWork || grit == inWork && left > 0) {
                remaining.add(new PlannedGrit(grit, left, whole.intensity()));
            }
        }
        return remaining;
    }

    /** Coarser bonds, then resin. */
    private List<PlannedGrit> planned() {
        return afterCoarser(coarserFirst(), remaining());
    }

    private List<PlannedGrit> wholePlan() {
        return afterCoarser(
                coarserBonds(), resin(steps).stream().map(this::planned).toList());
    }

    private PlannedGrit planned(PlannedStep step) {
        return new PlannedGrit(step.grade().number(), step.passes().low(), intensity.of(step));
    }

    private static List<PlannedGrit> afterCoarser(List<AbrasiveGrade> coarser, List<PlannedGrit> resin) {
        List<PlannedGrit> planned = new ArrayList<>();
        coarser.forEach(grade -> planned.add(new PlannedGrit(grade.number(), GROUND_AWAY)));
        planned.addAll(resin);
        return planned;
    }

    /** The last grit of the plan; the grit in work when the plan has none left. */
    public int lastGrit() {
        List<PlannedGrit> planned = planned();
        return planned.isEmpty()
                ? done.get(done.size() - 1).grit()
                : planned.get(planned.size() - 1).grit();
    }

    /** The zone as it stands; empty while no grit has run. */
    public Optional<GlossPrediction> now() {
        return done.isEmpty() ? Optional.empty() : Optional.of(forecast.afterMorePasses(0));
    }

    /** The zone after more passes of the grit in work, 0 to 1000; refused while no grit has run. */
    public GlossPrediction afterMorePasses(int more) {
        return forecast.afterMorePasses(more);
    }

    /** The zone at the end of each resin grit that remains. */
    public List<GlossPrediction> ends() {
        List<GlossPrediction> ends = forecast.through(planned());
        return ends.subList(coarserFirst().size(), ends.size());
    }

    /** How likely the zone reads the target or more at the end of the plan. */
    public Share chance(Gloss target) {
        List<PlannedGrit> planned = planned();
        return forecast.probability(target, planned.isEmpty() ? List.of(new PlannedGrit(lastGrit(), 0)) : planned);
    }

    /** Which passes, or which grit of the plan, would reach a target over 0 GU. */
    public TargetOutlook outlook(Gloss target) {
        return forecast.outlook(target, planned());
    }

    /** The same with the finer resin grits that the plan does not run, each with the passes of the plan's last. */
    public TargetOutlook outlookBeyondPlan(Gloss target) {
        List<PlannedStep> resin = resin(steps);
        PlannedGrit last = planned(resin.get(resin.size() - 1));
        List<PlannedGrit> grits = planned();
        recommendation.sequence().grades(Bond.RESIN).stream()
                .map(AbrasiveGrade::number)
                .filter(number -> number > lastGrit())
                .map(number -> new PlannedGrit(number, last.passes(), last.intensity()))
                .forEach(grits::add);
        return forecast.outlook(target, grits);
    }

    /**
     * What each start would bring by the end of the plan, coarse to fine; none where the plan grinds the floor level. Once
     * grits have run, it is what starting again would bring, as the readings have shown the floor; starts that take off less
     * than the work does are left out.
     */
    public List<GlossStart> starts() {
        return depths.damage().map(this::starts).orElse(List.of());
    }

    private List<GlossStart> starts(Range<Length> damage) {
        List<GlossStart> starts = new ArrayList<>();
        for (AbrasiveGrade grade : depths.starts()) {
            OldDamage taken = depths.from(damage, grade);
            boolean less = !done.isEmpty()
                    && taken.takenOff()
                                    .compareTo(otherStart()
                                            .map(OldDamage::takenOff)
                                            .orElse(taken.planned()))
                            < 0;
            if (!less) {
                starts.add(new GlossStart(grade, grade.equals(steps.get(0).grade()), taken, end(taken)));
            }
        }
        return List.copyOf(starts);
    }

    private GlossPrediction end(OldDamage taken) {
        return (done.isEmpty()
                        ? GlossForecast.of(work, Optional.of(taken), recommendation.parameters())
                        : forecast.startedAgain(taken))
                .end(wholePlan());
    }

    /** What the forecast rests on. */
    public ForecastBasis basis() {
        return forecast.basis();
    }
}
