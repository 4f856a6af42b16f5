package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.FloorMachine;
import stoneprocess.core.estimate.HighSpots;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.OtherWork;
import stoneprocess.core.estimate.Sealing;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WorkingHours;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.TrackKind;

/** Makes one job of one plan. */
final class JobMaker {
    private static final Range<Length> NO_LENGTH = Range.of(new Length(0), new Length(0));
    private static final Range<TimeSpan> NONE = Range.of(new TimeSpan(0), new TimeSpan(0));
    /** Part of {@code estimate.masking} and {@code estimate.mobilisation}, or done by the building manager. */
    private static final Set<Task> WITHOUT_LINES =
            EnumSet.of(Task.MEND_LEAK, Task.PLAN_EDGES, Task.MASK, Task.PROTECT_ROUTE, Task.SILENCE_DETECTORS);
    /** Name of the densifier's hours. */
    private static final String DENSIFY = "densify";

    private static final Set<FinishTask> AFTER_SEALING = EnumSet.of(FinishTask.MEASURE_SLIP, FinishTask.HAND_OVER);

    /** Work that goes faster with wider tools on a large floor. */
    private static final Set<String> WITH_WIDE_TOOLS = Set.of(
            DENSIFY, FinishTask.VACUUM_GRIT.key(), FinishTask.WASH_AND_DWELL.key(), FinishTask.SCRUB_AND_RINSE.key());

    private static final String WIDE_FLOOR = "estimate.wide-floor";
    private static final String WIDE_RATE = "estimate.wide-rate";
    private static final String STRIPPING = "estimate.upkeep.strip";
    private static final String BUILD_UP = "estimate.upkeep.build-up";
    private static final String STRIP_ROUNDS = "estimate.upkeep.strip-rounds";
    private static final String STRIP_DWELL = "estimate.upkeep.strip-dwell";
    private static final String STRIP_RINSES = "estimate.upkeep.strip-rinses";
    private static final String RINSING = "estimate.rinsing";
    private static final String BY_HAND = "estimate.hand";
    private static final String PLACE = "estimate.place";
    private static final String PIECE = "estimate.place-size";
    private static final String EACH_PIECE = "task.relay-lipped";
    private static final String HOLES = "estimate.place-holes";
    /** Before the name of the grit. */
    static final String CUT_GROUT = "cut-grout ";

    private static final double SHARE_OF_NOTHING = 0.01;

    private final Recommendation recommendation;
    private final Parameters parameters;
    private final JobOptions options;
    private final List<JobStep> steps = new ArrayList<>();
    private final List<OtherWork> others = new ArrayList<>();
    private final Set<JobNote> notes = EnumSet.noneOf(JobNote.class);
    private final Set<String> takesHours = new TreeSet<>();

    private final Map<String, List<Assumption>> rates = new LinkedHashMap<>();
    private final Map<String, Range<Quantity>> extents = new LinkedHashMap<>();
    private final KnownStone stone;
    private final HandWork handWork;

    JobMaker(Recommendation recommendation, JobOptions options) {
        this.recommendation = recommendation;
        this.parameters = recommendation.parameters();
        this.options = options;
        this.stone = KnownStone.of(recommendation);
        this.handWork = new HandWork(stone.cutting(), parameters);
    }

    PlannedJob make() {
        Plan plan = recommendation
                .plan()
                .orElseThrow(() -> new InvalidInputException(
                        "recommendation.status",
                        recommendation.status().key(),
                        "a recommendation with a plan: planned or provisional"));
        recommendation.withoutShare().stream()
                .filter(kind -> !plan.tracks().isEmpty())
                .findFirst()
                .ifPresent(kind -> {
                    throw new InvalidInputException(
                            "damages." + kind.key() + ".share",
                            "unknown",
                            "how much of the floor has it, as a share, an area or a number of places; it is not in the grits until then");
                });
        if (!PlannedJob.isThere(recommendation)) {
            throw new InvalidInputException(
                    "plan.tracks",
                    "none",
                    "a plan that cuts or cleans; a provisional one waits until the questions are answered");
        }
        Area area = recommendation
                .survey()
                .workedArea()
                .orElseThrow(() ->
                        new InvalidInputException(SurveyField.AREA.name(), "unknown", "the area of the floor in m2"));
        return make(plan, area);
    }

    private PlannedJob make(Plan plan, Area area) {
        if (recommendation.status() == Status.PROVISIONAL) {
            notes.add(JobNote.PLAN_IS_PROVISIONAL);
        }
        List<PlannedStep> field = plan.steps(TrackKind.OPEN_FIELD);
        List<PlannedStep> edge = plan.steps(TrackKind.EDGE);
        Range<Length> edges = plan.tracks().isEmpty() ? NO_LENGTH : edges(area, field, edge);
        plan.preparation().forEach(task -> prepare(task, area));
        if (plan.densifier() == Densifier.BEFORE_CUTS) {
            timed(DENSIFY, densifierWait(), Optional.empty(), area);
        }
        repairs(plan, area);
        cuts(field, edge, area, edges);
        if (plan.polishingAgent() != PolishingAgent.NONE) {
            powder(area);
        }
        // The cuts take off what a soft slab was given before them.
        if (plan.densifier() == Densifier.BEFORE_CUTS) {
            afterFineHone(field)
                    .ifPresent(grade -> timed(DENSIFY + " " + grade, densifierWait(), Optional.of(grade), area));
        }
        if (plan.densifier() == Densifier.AFTER_FINE_HONE) {
            timed(DENSIFY, densifierWait(), afterFineHone(field), area);
        }
        if (plan.densifier() == Densifier.AFTER_LAST_GRIT) {
            timed(DENSIFY, densifierWait(), last(), area);
        }
        Optional<Sealing> sealing = sealing(plan);
        plan.finishTasks().stream()
                .filter(task -> task != FinishTask.SEAL_LATER && task != FinishTask.REOPEN)
                .forEach(task -> timed(
                        task.key(),
                        NONE,
                        sealing.isPresent() && AFTER_SEALING.contains(task) ? Optional.of(OtherWork.SEALING) : last(),
                        area));
        if (stone.reckonedHardInDoubt()) {
            notes.add(JobNote.STONE_MAY_BE_HARD);
        }
        requireKnownTimes();
        if (others.stream().filter(other -> other.curing().high().minutes() > 0).count() > 1) {
            notes.add(JobNote.WAITS_MAY_OVERLAP);
        }
        if (isCold(plan) && (sealing.isPresent() || others.stream().anyMatch(OtherWork::cures))) {
            notes.add(JobNote.COLD_FLOOR);
        }
        Job job = new Job(
                area,
                edges,
                stone.cutting(),
                steps,
                others,
                plan.testArea() == TestArea.REQUIRED,
                sealing,
                site(plan, area));
        return new PlannedJob(job, notes, takesHours, rates, extents, parameters);
    }

    private boolean isCold(Plan plan) {
        boolean warmed = plan.preparation().stream().anyMatch(task -> task.task() == Task.WARM_THE_FLOOR);
        Temperature least = parameters.get("warmth.warm-enough", Temperature.class);
        return !warmed
                && recommendation
                        .survey()
                        .answer(SurveyField.FLOOR_TEMPERATURE)
                        .value()
                        .filter(told -> told.compareTo(least) < 0)
                        .isPresent();
    }

    /**
     * The usual site, with the shift of the survey where it tells one, and at night where it allows no other hours. On a
     * small job the owner signs the test area on the spot.
     */
    private SiteConditions site(Plan plan, Area area) {
        SiteConditions usual = SiteConditions.usual(parameters);
        WorkingTimes worked = options.worked()
                .orElseGet(() -> usual.times()
                        .withShift(recommendation
                                .survey()
                                .answer(SurveyField.SHIFT)
                                .value()
                                .orElse(usual.shift())));
        boolean night = recommendation
                .survey()
                .answer(SurveyField.WORKING_HOURS)
                .value()
                .equals(Optional.of(WorkingHours.NIGHT));
        Share atNight = options.night().orElse(night ? new Share(100) : usual.night());
        boolean watched = atNight.percent() < 100
                && !steps.isEmpty()
                && recommendation.warnings().stream().anyMatch(warning -> warning.hazard() == Hazard.BYSTANDERS);
        if (watched) {
            notes.add(JobNote.ONE_AT_THE_BARRIER);
        }
        boolean signed = plan.testArea() == TestArea.REQUIRED;
        boolean small = area.compareTo(parameters.get("floor-size.middle", Area.class)) < 0;
        if (signed && small) {
            notes.add(JobNote.SIGNED_ON_THE_SPOT);
        }
        return (signed && !small ? usual.withUsualSignOff(parameters) : usual)
                .withTimes(worked)
                .withNight(atNight)
                .withPeople(people(usual))
                .withAtBarrier(
                        watched
                                ? (int) parameters
                                        .get("estimate.at-barrier", Count.class)
                                        .number()
                                : 0);
    }

    private Range<Length> edges(Area area, List<PlannedStep> field, List<PlannedStep> edge) {
        boolean stairs = recommendation.survey().zones().stream().anyMatch(zone -> zone.kind() == ZoneKind.STAIR);
        if (edge.isEmpty()) {
            notes.add(JobNote.NO_EDGE_WORK);
        } else if (toldEdges().isEmpty() && field.isEmpty() && isAllHandWork()) {
            notes.add(JobNote.HAND_WORK_BY_AREA);
            return NO_LENGTH;
        } else if (stairs) {
            notes.add(JobNote.STAIRS_ARE_NOT_IN_THE_EDGES);
        }
        return toldEdges().map(told -> Range.of(told, told)).orElseGet(() -> {
            notes.add(JobNote.EDGES_FROM_AREA);
            double square = 4000 * StrictMath.sqrt(area.squareMetres());
            Range<Share> outline = parameters.range("estimate.outline", Share.class);
            return Range.of(
                    new Length(square * outline.low().percent() / 100),
                    new Length(square * outline.high().percent() / 100));
        });
    }

    /** As the options say, else as the survey does. */
    private Optional<Length> toldEdges() {
        return options.edges()
                .or(() -> recommendation.survey().answer(SurveyField.EDGES).value());
    }

    private boolean isAllHandWork() {
        double share = recommendation.survey().zones().stream()
                .filter(zone -> zone.kind() == ZoneKind.EDGE || zone.kind() == ZoneKind.STAIR)
                .mapToDouble(zone -> zone.share().percent())
                .sum();
        return share > 100 - SHARE_OF_NOTHING;
    }

    private void prepare(Preparation preparation, Area area) {
        Task task = preparation.task();
        Range<TimeSpan> rest = preparation.rest().orElse(NONE);
        if (task == Task.SILENCE_DETECTORS) {
            notes.add(JobNote.DETECTORS_BY_OTHERS);
        }
        if (task == Task.LET_DRY) {
            notes.add(JobNote.A_READING_ENDS_A_WAIT);
        }
        if (WITHOUT_LINES.contains(task)) {
            return;
        }
        Optional<DamageKind> damage = HandWork.damage(task);
        Sounding sounding =
                recommendation.survey().answer(SurveyField.SOUNDING).value().orElse(Sounding.HOLLOW);
        if (options.times().containsKey(task.key())) {
            timed(task.key(), rest, Optional.empty(), area);
        } else if (task == Task.STRIP_COATING) {
            reckoned(
                    task, rest, stripping(area), STRIPPING, BUILD_UP, STRIP_ROUNDS, STRIP_DWELL, STRIP_RINSES, RINSING);
        } else if (task == Task.RELAY_LIPPED) {
            pieces(task, rest, places(DamageKind.LIPPAGE, area));
        } else if (task == Task.FIX_HOLLOW && sounding != Sounding.HOLLOW) {
            pieces(task, rest, moved(sounding, area));
        } else if (task == Task.FILL_CRACKS) {
            fill(task, rest, area);
        } else if (damage.isPresent()) {
            String rate = "task." + task.key();
            Range<Area> places = places(damage.get(), area);
            reckoned(task, rest, handWork.at(rate, places), rate, PLACE);
            extents.put(task.key(), Range.of(places.low(), places.high()));
        } else {
            timed(task.key(), rest, Optional.empty(), area);
        }
    }

    private void reckoned(Task task, Range<TimeSpan> rest, Range<TimeSpan> hours, String... parameterNames) {
        takesHours.add(task.key());
        rated(new OtherWork(task.key(), hours, rest, Optional.empty()), parameterNames);
    }

    private void pieces(Task task, Range<TimeSpan> rest, Range<Area> places) {
        Range<Double> pieces = handWork.pieces(places);
        reckoned(task, rest, handWork.pieces(EACH_PIECE, pieces), EACH_PIECE, PIECE);
        extents.put(
                task.key(), Range.of(new Count(Math.floor(pieces.low())), new Count(StrictMath.ceil(pieces.high()))));
    }

    /** As large as the survey says, else as a few places usually are. */
    private Range<Area> places(DamageKind damage, Area area) {
        Optional<Area> told = handWork.told(damage, recommendation.survey(), area);
        notes.add(told.isPresent() ? JobNote.REPAIRS_BY_SURVEY : JobNote.REPAIRS_AS_USUAL);
        return told.map(counted -> Range.of(counted, counted)).orElseGet(() -> usualPlaces(area));
    }

    /** As much of a floor as a few places usually take up. */
    private Range<Area> usualPlaces(Area area) {
        Range<Share> share = parameters.range("estimate.places", Share.class);
        return Range.of(
                new Area(area.squareMetres() * share.low().percent() / 100),
                new Area(area.squareMetres() * share.high().percent() / 100));
    }

    /** Few pieces as usual; where more of them rock, the least that is more than a few. */
    private Range<Area> moved(Sounding sounding, Area area) {
        notes.add(JobNote.REPAIRS_AS_USUAL);
        if (sounding != Sounding.LOOSE) {
            return usualPlaces(area);
        }
        Area many = new Area(area.squareMetres() * parameters.part("local-repair.pieces"));
        return Range.of(many, many);
    }

    /** Cracks and gouges in their places; holes, where the stone has them everywhere, over the floor. */
    private void fill(Task task, Range<TimeSpan> rest, Area area) {
        FloorSurvey survey = recommendation.survey();
        List<DamageKind> open = new ArrayList<>();
        if (handWork.worst(DamageKind.CRACKS, survey) > 0) {
            open.add(DamageKind.CRACKS);
        }
        if (handWork.worst(DamageKind.SCRATCHES, survey) == ScratchClass.GOUGED.ordinal()) {
            open.add(DamageKind.SCRATCHES);
        }
        String rate = "task." + task.key();
        if (open.isEmpty()) {
            reckoned(task, rest, usual(HOLES, area), HOLES);
            return;
        }
        List<Range<Area>> places =
                open.stream().map(damage -> places(damage, area)).toList();
        Range<Area> all = Range.of(sum(places, Range::low), sum(places, Range::high));
        reckoned(task, rest, handWork.at(rate, all), rate, PLACE);
        extents.put(task.key(), Range.of(all.low(), all.high()));
    }

    private static Area sum(List<Range<Area>> places, Function<Range<Area>, Area> end) {
        return new Area(places.stream().map(end).mapToDouble(Area::squareMetres).sum());
    }

    /**
     * In rounds, each spread, left to dwell, scrubbed off and rinsed: fastest on one coat, slowest where coats have built
     * up.
     */
    private Range<TimeSpan> stripping(Area area) {
        double rate = parameters.get(STRIPPING, AreaRate.class).squareMetresPerHour();
        double slowed = parameters.part(BUILD_UP);
        Range<AreaRate> rinsing = parameters.range(RINSING, AreaRate.class);
        if (!(rate * slowed > 0 && slowed <= 1 && rinsing.low().kept() > 0)) {
            throw new InvalidInputException(
                    STRIPPING,
                    rate + ", " + slowed + " and " + rinsing.low().print(),
                    "rates above zero, slowed to 100 % or less");
        }
        double rounds = parameters.get(STRIP_ROUNDS, Count.class).number();
        double rinsed = parameters.get(STRIP_RINSES, Count.class).number()
                * Job.withWideTools(area, parameters).squareMetres();
        Range<TimeSpan> dwell = parameters.range(STRIP_DWELL, TimeSpan.class);
        double stripped = area.squareMetres() / rate;
        return Range.of(
                new TimeSpan(rounds
                        * (60 * (stripped + rinsed / rinsing.high().squareMetresPerHour())
                                + dwell.low().minutes())),
                new TimeSpan(rounds
                        * (60 * (stripped / slowed + rinsed / rinsing.low().squareMetresPerHour())
                                + dwell.high().minutes())));
    }

    /** By the hours given, else by the usual ones, so that a total lacks nothing. */
    private void timed(String name, Range<TimeSpan> rest, Optional<String> after, Area area) {
        Optional<Range<TimeSpan>> given = Optional.ofNullable(options.times().get(name));
        takesHours.add(name);
        if (given.isPresent()) {
            others.add(new OtherWork(name, given.get(), rest, after));
        } else {
            String kind = name.split(" ", 2)[0];
            String parameter = "task." + kind;
            if (WITH_WIDE_TOOLS.contains(kind)) {
                Area counted = Job.withWideTools(area, parameters);
                rated(new OtherWork(name, usual(parameter, counted), rest, after), parameter, WIDE_FLOOR, WIDE_RATE);
            } else {
                rated(new OtherWork(name, usual(parameter, area), rest, after), parameter);
            }
        }
    }

    /** So many hours a job, less on a small floor, or so many square metres an hour. */
    private Range<TimeSpan> usual(String parameter, Area area) {
        Range<Quantity> usual = parameters.range(parameter, Quantity.class);
        if (usual.low() instanceof AreaRate) {
            if (usual.low().kept() == 0) {
                throw new InvalidInputException(parameter + ".low", usual.low().print(), "more than zero");
            }
            double minutes = 60 * area.squareMetres();
            return Range.of(
                    new TimeSpan(minutes / usual.high().kept()),
                    new TimeSpan(minutes / usual.low().kept()));
        }
        double part = Job.ofUsual(area, parameters).percent() / 100;
        return Range.of(
                new TimeSpan(part * usual.low().kept()),
                new TimeSpan(part * usual.high().kept()));
    }

    private void rated(OtherWork work, String... parameterNames) {
        others.add(work);
        rates.put(
                work.name(),
                Stream.of(parameterNames)
                        .map(name -> Assumption.of(name, parameters))
                        .toList());
    }

    private void requireKnownTimes() {
        for (String work : new TreeSet<>(options.times().keySet())) {
            if (!takesHours.contains(work)) {
                throw new InvalidInputException(
                        "times", work, takesHours.isEmpty() ? "no times" : "one of " + String.join(", ", takesHours));
            }
        }
    }

    /**
     * Local repairs are cut before the field, which then blends over them. Where pieces were relaid, what still stands
     * proud is ground down by hand.
     */
    private void repairs(Plan plan, Area area) {
        List<PlannedStep> grades = plan.steps(TrackKind.LOCAL_REPAIR);
        boolean relaid = plan.preparation().stream().anyMatch(task -> task.task() == Task.RELAY_LIPPED);
        for (Repair repair : plan.repairs()) {
            String name = repair.key();
            Optional<DamageKind> damage = HandWork.damage(repair);
            boolean ground = !grades.isEmpty() && repair != Repair.POWDER_FIRST;
            if (repair == Repair.LOCAL_LIPPAGE && relaid && !ground) {
                continue;
            }
            if (damage.isEmpty() || options.times().containsKey(name)) {
                timed(name, NONE, Optional.of(OtherWork.TEST_AREA), area);
                continue;
            }
            takesHours.add(name);
            Optional<Area> told = handWork.told(damage.get(), recommendation.survey(), area);
            notes.add(told.isPresent() ? JobNote.REPAIRS_BY_SURVEY : JobNote.REPAIRS_BY_LIMIT);
            notes.add(JobNote.HAND_WORK_USES_UP_MORE);
            Range<Area> places =
                    told.map(counted -> Range.of(counted, counted)).orElseGet(() -> handWork.upToLimit(area));
            extents.put(name, Range.of(places.low(), places.high()));
            String rate = ground ? BY_HAND : "task." + name;
            rated(
                    new OtherWork(
                            name,
                            ground ? handWork.over(places, grades) : handWork.at(rate, places),
                            NONE,
                            Optional.of(OtherWork.TEST_AREA)),
                    rate,
                    PLACE);
        }
    }

    /** The field's steps, each followed by the grades that only the edges need before the next. */
    private void cuts(List<PlannedStep> field, List<PlannedStep> edge, Area area, Range<Length> edges) {
        Optional<String> after = Optional.empty();
        int next = 0;
        for (PlannedStep step : field) {
            String grade = step.grade().key();
            int same = indexOf(edge, grade);
            while (next < same) {
                edgesAlone(edge.get(next++), edges, area, after);
            }
            next = Math.max(next, same + 1);
            if (step.machine() == MachineClass.EDGE_TOOL) {
                byHand("by-hand " + grade, handWork.over(area, step), after);
                if (same >= 0) {
                    edgesAlone(edge.get(same), edges, area, after);
                }
            } else {
                steps.add(JobStep.of(
                                step.grade(),
                                step.depth(),
                                FloorMachine.usual(step.machine(), parameters),
                                step.passes(),
                                water(step, area))
                        .withEdges(
                                same < 0
                                        ? Optional.empty()
                                        : Optional.of(edge.get(same).passes()))
                        .withHighSpots(step.equals(field.get(0)) ? highSpots(step) : Optional.empty()));
                after = Optional.of(grade);
            }
            if (step.handling().contains(Handling.REGROUT_PITS)) {
                timed(
                        Handling.REGROUT_PITS.key() + " " + grade,
                        parameters.range("rest.regrout", TimeSpan.class),
                        after,
                        area);
                if (step.equals(field.get(field.size() - 1)) && step.machine() != MachineClass.EDGE_TOOL) {
                    after = Optional.of(cutGrout(steps.get(steps.size() - 1)).name());
                }
            }
        }
        for (PlannedStep step : edge.subList(next, edge.size())) {
            edgesAlone(step, edges, area, after);
        }
    }

    private Optional<HighSpots> highSpots(PlannedStep first) {
        return new Levelling(
                        recommendation.survey(),
                        recommendation.sequence(),
                        new Removal(stone.cutting(), parameters),
                        AggregateDepth.of(recommendation.survey(), stone, parameters))
                .of(
                        first.grade(),
                        first.depth(),
                        first.machine(),
                        StepFigures.middleMass(first.machine(), first.weight(), parameters));
    }

    /** The last grit once more, which cuts the grout off the chips, is the face that stays and takes no stone. */
    private JobStep cutGrout(JobStep last) {
        Length none = new Length(0);
        JobStep again = new JobStep(
                CUT_GROUT + last.name(),
                last.kind(),
                Range.of(none, none),
                last.machine(),
                last.passes(),
                last.water(),
                last.edges(),
                Optional.empty());
        steps.add(again);
        return again;
    }

    private void edgesAlone(PlannedStep step, Range<Length> edges, Area area, Optional<String> after) {
        boolean byArea = notes.contains(JobNote.HAND_WORK_BY_AREA);
        byHand(
                "edges-alone " + step.grade().key(),
                byArea ? handWork.over(area, step) : handWork.along(edges, step),
                after);
    }

    private void byHand(String name, Range<TimeSpan> hours, Optional<String> after) {
        notes.add(JobNote.HAND_WORK_USES_UP_MORE);
        rated(new OtherWork(name, hours, NONE, after), BY_HAND);
    }

    private static int indexOf(List<PlannedStep> steps, String grade) {
        return steps.stream().map(step -> step.grade().key()).toList().indexOf(grade);
    }

    private static Range<Coverage> water(PlannedStep step, Area area) {
        return step.litresPerPass()
                .map(litres -> Range.of(
                        new Coverage(litres.low().litres() / area.squareMetres()),
                        new Coverage(litres.high().litres() / area.squareMetres())))
                .orElseGet(() -> Range.of(new Coverage(0), new Coverage(0)));
    }

    private void powder(Area area) {
        if (steps.isEmpty()) {
            timed(StepKind.POWDER.key(), NONE, Optional.empty(), area);
            return;
        }
        notes.add(JobNote.POWDER_AS_USUAL);
        JobStep finest = steps.get(steps.size() - 1);
        Range<Count> usual = parameters.range("powder.passes", Count.class);
        Range<Integer> passes =
                Range.of((int) usual.low().number(), (int) usual.high().number());
        steps.add(JobStep.powder(finest.machine(), passes, parameters.range("coverage.resin-fine", Coverage.class))
                .withEdges(finest.edges().map(along -> passes)));
    }

    private Optional<String> last() {
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(steps.get(steps.size() - 1).name());
    }

    private Range<TimeSpan> densifierWait() {
        TimeSpan wait = parameters.get("cure.densifier", TimeSpan.class);
        return Range.of(wait, wait);
    }

    /** After the first resin grade of 400 or finer; at the end where there is none. */
    private Optional<String> afterFineHone(List<PlannedStep> field) {
        return field.stream()
                .map(PlannedStep::grade)
                .filter(grade -> grade.bond() == Bond.RESIN && grade.number() >= Cut.FINE_HONE.number())
                .map(AbrasiveGrade::key)
                .filter(grade -> steps.stream().anyMatch(step -> step.name().equals(grade)))
                .findFirst()
                .or(this::last);
    }

    private Optional<Sealing> sealing(Plan plan) {
        if (plan.finishTasks().contains(FinishTask.SEAL_LATER)) {
            notes.add(JobNote.SEALED_LATER);
            return Optional.empty();
        }
        if (plan.sealer() == Sealer.NONE) {
            return Optional.empty();
        }
        Sealing sealing = Sealing.usual(parameters);
        double longest =
                sealing.drying().high().minutes() + sealing.curing().high().minutes();
        recommendation
                .survey()
                .answer(SurveyField.REOPENS_AFTER)
                .value()
                .filter(opens -> opens.minutes() < longest)
                .ifPresent(opens -> notes.add(JobNote.OPENS_BEFORE_CURED));
        return Optional.of(sealing);
    }

    /** The people with one machine, of whom the survey may have fewer. */
    private int people(SiteConditions usual) {
        int crew = recommendation
                .survey()
                .answer(SurveyField.CREW)
                .value()
                .map(told -> (int) told.number())
                .orElse(usual.people());
        if (crew > usual.people()) {
            notes.add(JobNote.CREW_IS_LARGER);
        } else if (crew < usual.people() && steps.stream().anyMatch(JobStep::wet)) {
            notes.add(JobNote.CREW_IS_SMALLER);
        }
        return Math.min(crew, usual.people());
    }
}
