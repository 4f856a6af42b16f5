package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;

/**
 * What further wet diamond passes will bring on one zone, at 60 degrees. Immutable; the same work gives the same figures.
 *
 * <p>Bayes on a grid. A grit follows a {@link SaturationCurve} to a limit of its own; a grit that is not coarser than the
 * one before never dulls the floor. Before any reading the limit of a grit is spread as {@link GritPrior} says. Its
 * standing is sqrt(w) q + sqrt(1 - w) d with w = {@code gloss-final.shared}: the quality q belongs to the floor and
 * holds for all grits, so that each reading also narrows the grits that follow; d belongs to the grit. On some floors
 * ({@code gloss-start.too-fine}) the planned start too is too fine: old damage takes away a part of the gloss that no later
 * grit gives back, evenly spread in its logarithm between {@code gloss-start.left.low} and {@code .high} of the ceiling.
 * The attenuation by damage falls in proportion to the depth that is taken off, so that a coarser start leaves less of it
 * and a finer one more; a finer one also leaves what the plan would have taken off, see {@link OldDamage}. The
 * pace tau is log-normal with the middle {@code gloss-final.level} of floors in {@code gloss-passes.<class>}, which are
 * passes of the usual single disc; a pass of another machine counts by what it takes off, see {@link GritStage}. A mean of n
 * readings scatters normally about the curve with the variance max(least scatter, scatter x level)^2 / n + (misfit x
 * level)^2; the share {@code gloss-reading.astray} of readings shows anything. The curve is published for tile (see
 * there); all spreads are common practice with low confidence.
 */
public final class GlossForecast {
    private static final int FINE = 400;

    private final WorkSoFar work;
    private final Parameters parameters;
    private final FloorGrid grid;
    private final ForecastBasis basis;

    private GlossForecast(WorkSoFar work, Parameters parameters, FloorGrid grid, ForecastBasis basis) {
        this.work = work;
        this.parameters = parameters;
        this.grid = grid;
        this.basis = basis;
    }

    /**
     * Learns from the work so far.
     *
     * @param work the zone; a reading that the stone cannot show at all ({@link GlossSuspicion#OVER_CEILING}) is refused
     * @param parameters those named in the class description
     * @throws InvalidInputException for such a reading, and naming the numbers that make no prior
     */
    public static GlossForecast of(WorkSoFar work, Parameters parameters) {
        return of(work, Optional.empty(), parameters);
    }

    /**
     * Learns from work that began with another start than the plan's.
     *
     * @param damage what the start takes off; empty for the plan's own start
     */
    public static GlossForecast of(WorkSoFar work, Optional<OldDamage> damage, Parameters parameters) {
        FloorGrid grid = FloorGrid.start(
                FloorModel.of(work.hardness(), work.ceiling(), parameters),
                damage,
                work.start().map(reading -> possible("start", reading, work, parameters)));
        int readings = work.start().map(LevelReading::readings).orElse(0);
        int occasions = work.start().isPresent() ? 1 : 0;
        for (int i = 0; i < work.stages().size(); i++) {
            GritStage stage = work.stages().get(i);
            grid = grid.next(workOf(work, i - 1), stage.grit(), mayFall(work, i - 1, stage.grit()));
            for (LevelReading reading : stage.readings()) {
                grid = grid.read(possible("stages." + i, reading, work, parameters), stage.work(reading.passes()));
                readings += reading.readings();
                occasions++;
            }
        }
        return new GlossForecast(
                work, parameters, grid, new ForecastBasis(readings, occasions, sources(work, parameters)));
    }

    private static LevelReading possible(String field, LevelReading reading, WorkSoFar work, Parameters parameters) {
        GlossCheck check = GlossCheck.of(reading.mean(), Geometry.DEG_60, work.ceiling(), parameters);
        if (check.suspicion() != GlossSuspicion.NONE) {
            throw new InvalidInputException(
                    field + ".mean",
                    reading.mean().print(),
                    "up to the stone's ceiling of " + work.ceiling().at60().print()
                            + "; check calibration, angle and stone");
        }
        return reading;
    }

    private static int passes(WorkSoFar work, int stage) {
        return stage < 0 ? 0 : work.stages().get(stage).passes();
    }

    private static double workOf(WorkSoFar work, int stage) {
        return stage < 0 ? 0 : work.stages().get(stage).work(passes(work, stage));
    }

    private static boolean mayFall(WorkSoFar work, int before, int grit) {
        return before < 0 || grit < work.stages().get(before).grit();
    }

    private static List<Citation> sources(WorkSoFar work, Parameters parameters) {
        List<String> prefixes = List.of(
                "gloss-final." + work.hardness().key() + ".",
                "gloss-passes." + work.hardness().key() + ".",
                "gloss-start.",
                "gloss-reading.",
                "gloss-curve.");
        List<Citation> sources = new ArrayList<>(parameters.all().stream()
                .filter(parameter -> prefixes.stream().anyMatch(parameter.name()::startsWith))
                .map(Parameter::source)
                .distinct()
                .toList());
        sources.add(Sources.standard().get("GLOSS-SATURATION"));
        return sources;
    }

    /**
     * The zone as it stands, started again: what the readings have shown of the floor stays.
     *
     * @param damage what the new start takes off
     */
    public GlossForecast startedAgain(OldDamage damage) {
        int last = work.stages().size() - 1;
        return new GlossForecast(
                WorkSoFar.none(work.hardness(), work.ceiling()),
                parameters,
                grid.again(workOf(work, last), damage.part()),
                basis);
    }

    /** What the forecast rests on. */
    public ForecastBasis basis() {
        return basis;
    }

    /**
     * The zone after more passes of the grit in work.
     *
     * @param more 0 to 1000; anything else is refused, and so is a floor on which no grit has run
     */
    public GlossPrediction afterMorePasses(int more) {
        GritStage stage = inWork();
        GritStage.passes(more);
        int passes = stage.passes() + more;
        return prediction(stage.grit(), passes, grid.after(stage.work(passes), FINE));
    }

    private GritStage inWork() {
        if (work.stages().isEmpty()) {
            throw new InvalidInputException("stages", "none", "at least one grit in work");
        }
        return work.stages().get(work.stages().size() - 1);
    }

    /**
     * The zone at the end of each grit of a plan. When the first is the grit in work, its passes are further ones.
     *
     * @param plan grits in order; a grit that follows itself is refused
     */
    public List<GlossPrediction> through(List<PlannedGrit> plan) {
        List<GlossPrediction> predictions = new ArrayList<>();
        follow(plan).forEach(end -> predictions.add(prediction(end.grit(), end.passes(), end.levels())));
        return List.copyOf(predictions);
    }

    /**
     * How likely the mean of the zone is at the target or over it at the end of a plan, in percent.
     *
     * @param target any gloss; 0 % over the ceiling
     * @param plan at least one grit, else refused; as in {@link #through}
     */
    public Share probability(Gloss target, List<PlannedGrit> plan) {
        return percent(last(plan).levels().partFrom(target.gloss()));
    }

    /**
     * The zone at the end of a plan.
     *
     * @param plan at least one grit, else refused; as in {@link #through}
     */
    public GlossPrediction end(List<PlannedGrit> plan) {
        End last = last(plan);
        return prediction(last.grit(), last.passes(), last.levels());
    }

    private End last(List<PlannedGrit> plan) {
        List<End> ends = follow(plan);
        if (ends.isEmpty()) {
            throw new InvalidInputException("plan", "none", "at least one grit");
        }
        return ends.get(ends.size() - 1);
    }

    /**
     * Which passes or which grit would reach a target. Likely is {@code gloss-target.likely} or more, out of reach less
     * than {@code gloss-target.unlikely}. Up to {@code gloss-target.passes} more passes of the grit in work are tried,
     * then the grits of the plan one after the other.
     *
     * @param target the gloss to reach, over 0 GU; zero is refused
     * @param plan the grits that remain, may be empty; as in {@link #through}
     */
    public TargetOutlook outlook(Gloss target, List<PlannedGrit> plan) {
        if (target.gloss() == 0) {
            throw new InvalidInputException("target", target.print(), "a gloss over 0 GU");
        }
        List<TargetOption> options = new ArrayList<>();
        int own = 0;
        if (!work.stages().isEmpty()) {
            GritStage stage = inWork();
            int most = (int) parameters.get("gloss-target.passes", Count.class).number();
            GritStage.passes(most);
            for (int more = 0; more <= most; more++) {
                int passes = stage.passes() + more;
                options.add(new TargetOption(
                        stage.grit(),
                        passes,
                        percent(grid.after(stage.work(passes), FINE).partFrom(target.gloss()))));
            }
            own = options.size();
        }
        for (End end : follow(plan)) {
            options.add(new TargetOption(
                    end.grit(), end.passes(), percent(end.levels().partFrom(target.gloss()))));
        }
        Share likely = parameters.get("gloss-target.likely", Share.class);
        Optional<TargetOption> reachedBy = options.stream()
                .filter(option -> option.probability().compareTo(likely) >= 0)
                .findFirst();
        Optional<TargetOption> best = options.stream()
                .reduce((likelier, option) ->
                        option.probability().compareTo(likelier.probability()) > 0 ? option : likelier);
        Share oldDamage = percent(grid.oldDamageUnder(target.gloss()));
        return new TargetOutlook(
                verdict(target, reachedBy.map(options::indexOf), own, best),
                target,
                reachedBy,
                best,
                oldDamage,
                oldDamage.compareTo(likely) >= 0,
                basis);
    }

    private TargetVerdict verdict(Gloss target, Optional<Integer> reached, int own, Optional<TargetOption> best) {
        if (target.compareTo(work.ceiling().at60()) > 0) {
            return TargetVerdict.OVER_CEILING;
        }
        if (reached.isPresent()) {
            if (reached.get() >= own) {
                return TargetVerdict.FINER_GRIT;
            }
            return reached.get() == 0 ? TargetVerdict.REACHED : TargetVerdict.MORE_PASSES;
        }
        Share unlikely = parameters.get("gloss-target.unlikely", Share.class);
        boolean out = best.isPresent() && best.get().probability().compareTo(unlikely) < 0;
        return out ? TargetVerdict.OUT_OF_REACH : TargetVerdict.OPEN;
    }

    private record End(int grit, int passes, Levels levels) {}

    private List<End> follow(List<PlannedGrit> plan) {
        List<End> ends = new ArrayList<>();
        FloorGrid now = grid;
        int last = work.stages().size() - 1;
        int passes = passes(work, last);
        double done = workOf(work, last);
        int grit = last < 0 ? 0 : work.stages().get(last).grit();
        for (int i = 0; i < plan.size(); i++) {
            PlannedGrit planned = plan.get(i);
            if (i > 0 && planned.grit() == grit) {
                throw new InvalidInputException(
                        "plan." + i, Integer.toString(grit), "another grit than the one before");
            }
            if (planned.grit() == grit) {
                passes += planned.passes();
                done += planned.work();
            } else {
                now = now.next(done, planned.grit(), grit == 0 || planned.grit() < grit);
                passes = planned.passes();
                done = planned.work();
                grit = planned.grit();
            }
            ends.add(new End(grit, passes, now.after(done, FINE)));
        }
        return ends;
    }

    private GlossPrediction prediction(int grit, int passes, Levels levels) {
        Share level = parameters.get("gloss-forecast.level", Share.class);
        double tail = (1 - Sample.probability("gloss-forecast.level", level)) / 2;
        return new GlossPrediction(
                grit,
                passes,
                new Gloss(levels.quantile(0.5)),
                Range.of(new Gloss(levels.quantile(tail)), new Gloss(levels.quantile(1 - tail))),
                level,
                basis);
    }

    private static Share percent(double part) {
        return new Share(100 * part);
    }
}
