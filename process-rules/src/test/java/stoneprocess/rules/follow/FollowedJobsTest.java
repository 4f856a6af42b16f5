package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.GlossTarget;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.TrackIntensity;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;

/**
 * Jobs on invented floors, done five times over: by the advice to the end, by always going on, by always adding two passes, by
 * repeating the last grit until the meter reads the target, and by starting over from the coarsest resin grit until it does. On
 * floors that answer by the model of progress, and on floors of another law. No cut of the advice goes below what may be taken
 * off; starting over does on some floors, so that the count can show it.
 */
class FollowedJobsTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final int JOBS = Boolean.getBoolean("audit.whole") ? 1000 : 96;
    private static final int MOST_HOLD_POINTS = 60;
    private static final int MOST_REPEATS = 10;
    private static final String ADVISED = "by the advice";
    private static final String GO_ON = "always go on";
    private static final String ADD_TWO = "always add two passes";
    private static final String REPEAT_LAST = "repeat the last grit until the meter agrees";
    private static final String START_OVER = "start over until the meter agrees";
    private static final List<AbrasiveGrade> RESIN = GritSequence.standard().grades(Bond.RESIN);
    private static final List<Recommendation> PLANS = plans();

    /** How a job ended. */
    private enum End {
        REACHED,
        ASKED,
        SHORT
    }

    private record Outcome(End end, int passes, int repeated, boolean belowBudget) {}

    /** Makes the floor of a job. */
    private interface FloorMaker {
        WorkedFloor of(Recommendation plan, int job);
    }

    @Test
    void the_advice_reaches_the_finish_oftener_than_naive_work_and_never_cuts_below_the_budget() {
        Map<String, List<Outcome>> outcomes = outcomes("by the model of progress", FollowedJobsTest::floor);
        List<Outcome> advised = outcomes.get(ADVISED);
        assertThat(advised).noneMatch(Outcome::belowBudget);
        assertThat(outcomes.get(START_OVER)).anyMatch(Outcome::belowBudget);
        assertThat(share(advised, End.REACHED)).isGreaterThan(share(outcomes.get(GO_ON), End.REACHED) + 10);
        assertThat(share(advised, End.REACHED)).isGreaterThan(share(outcomes.get(ADD_TWO), End.REACHED) + 5);
        assertThat(share(advised, End.SHORT)).isLessThan(share(outcomes.get(ADD_TWO), End.SHORT));
    }

    @Test
    void on_floors_of_another_law_too() {
        Map<String, List<Outcome>> outcomes = outcomes("by another law", FollowedJobsTest::roughFloor);
        List<Outcome> advised = outcomes.get(ADVISED);
        assertThat(advised).noneMatch(Outcome::belowBudget);
        assertThat(outcomes.get(START_OVER)).anyMatch(Outcome::belowBudget);
        assertThat(share(advised, End.REACHED)).isGreaterThan(share(outcomes.get(GO_ON), End.REACHED) + 10);
        assertThat(share(advised, End.REACHED)).isGreaterThan(share(outcomes.get(ADD_TWO), End.REACHED) + 5);
    }

    private static Map<String, List<Outcome>> outcomes(String law, FloorMaker floors) {
        Map<String, List<Outcome>> outcomes = new LinkedHashMap<>();
        outcomes.put(ADVISED, all(job -> new Crew(plan(job), floors.of(plan(job), job), hasMeter(job)).work()));
        outcomes.put(GO_ON, all(job -> naive(plan(job), floors.of(plan(job), job), 0, List.of())));
        outcomes.put(ADD_TWO, all(job -> naive(plan(job), floors.of(plan(job), job), 2, List.of())));
        outcomes.put(REPEAT_LAST, all(job -> naive(plan(job), floors.of(plan(job), job), 0, lastGrade(plan(job)))));
        outcomes.put(START_OVER, all(job -> naive(plan(job), floors.of(plan(job), job), 0, wholeLadder(plan(job)))));
        for (boolean meter : List.of(true, false)) {
            outcomes.put(
                    ADVISED + (meter ? ", crews with a meter" : ", crews without"),
                    IntStream.range(0, JOBS)
                            .filter(job -> hasMeter(job) == meter)
                            .mapToObj(outcomes.get(ADVISED)::get)
                            .toList());
        }
        System.out.printf("| %d jobs %s | reached | asked | short | passes | repeats | below budget |%n", JOBS, law);
        outcomes.forEach((name, all) -> System.out.printf(
                Locale.ROOT,
                "| %s | %.1f %% | %.1f %% | %.1f %% | %.1f | %.2f | %d |%n",
                name,
                share(all, End.REACHED),
                share(all, End.ASKED),
                share(all, End.SHORT),
                all.stream().mapToInt(Outcome::passes).average().orElseThrow(),
                all.stream().mapToInt(Outcome::repeated).average().orElseThrow(),
                all.stream().filter(Outcome::belowBudget).count()));
        return outcomes;
    }

    /** Every other round over the plans. */
    private static boolean hasMeter(int job) {
        return job / PLANS.size() % 2 == 0;
    }

    private static List<AbrasiveGrade> lastGrade(Recommendation plan) {
        List<PlannedStep> steps = field(plan);
        return List.of(steps.get(steps.size() - 1).grade());
    }

    private static List<AbrasiveGrade> wholeLadder(Recommendation plan) {
        int last = lastGrade(plan).get(0).number();
        return RESIN.stream().filter(grade -> grade.number() <= last).toList();
    }

    private static Recommendation plan(int job) {
        return PLANS.get(job % PLANS.size());
    }

    private static List<Outcome> all(IntFunction<Outcome> strategy) {
        return IntStream.range(0, JOBS).parallel().mapToObj(strategy).toList();
    }

    private static double share(List<Outcome> outcomes, End end) {
        return 100.0 * outcomes.stream().filter(outcome -> outcome.end() == end).count() / outcomes.size();
    }

    private static List<Recommendation> plans() {
        List<Recommendation> plans = new ArrayList<>();
        for (boolean marble : List.of(true, false)) {
            for (Goal goal : List.of(Goal.SEMI_GLOSS, Goal.POLISH)) {
                for (ScratchClass look : List.of(ScratchClass.SEEN, ScratchClass.FELT_BY_NAIL)) {
                    for (double thickness : List.of(8.0, 20.0)) {
                        FloorSurvey.Builder floor = marble
                                ? Floors.calciteMarble(Floors.scratched(look, 60))
                                : Floors.damaged(Floors.scratched(look, 60));
                        plans.add(ADVISOR.recommend(floor.set(SurveyField.GOAL, goal)
                                .set(SurveyField.THICKNESS, Length.of(thickness, Unit.MILLIMETRE))
                                .build()));
                    }
                }
            }
        }
        plans.removeIf(plan -> plan.plan().isEmpty()
                || field(plan).isEmpty()
                || field(plan).stream().anyMatch(step -> step.grade().bond() != Bond.RESIN));
        assertThat(plans).as("floors that are planned with resin grades alone").hasSizeGreaterThan(8);
        return plans;
    }

    private static List<PlannedStep> field(Recommendation plan) {
        return plan.plan().stream()
                .flatMap(made -> made.tracks().stream())
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .map(Track::steps)
                .flatMap(List::stream)
                .toList();
    }

    private static WorkedFloor floor(Recommendation plan, int job) {
        KnownStone stone = KnownStone.of(plan);
        Hardness hardness = stone.hardness().iterator().next();
        return new SimulatedFloor(
                new Random(7919L * job + 1),
                hardness,
                stone.lowestCeiling(),
                RESIN,
                new TrackIntensity(plan, TrackKind.OPEN_FIELD),
                field(plan).get(0).grade());
    }

    private static WorkedFloor roughFloor(Recommendation plan, int job) {
        PlannedStep first = field(plan).get(0);
        return new RoughFloor(
                new Random(104_729L * job + 3),
                KnownStone.of(plan).lowestCeiling().at60().gloss(),
                RESIN,
                first.grade(),
                middle(first));
    }

    private static int middle(PlannedStep step) {
        return (step.passes().low() + step.passes().high()) / 2;
    }

    private static boolean belowBudget(Recommendation plan, WorkedFloor floor) {
        double thickness = plan.survey()
                .answer(SurveyField.THICKNESS)
                .value()
                .orElseThrow()
                .millimetres();
        double share = plan.parameters().get("removal-share.stone", Share.class).percent();
        return floor.removed() > thickness * share / 100;
    }

    /** Follows the list of grits whatever is seen, then repeats some until a mean of four readings meets the target. */
    private static Outcome naive(Recommendation plan, WorkedFloor floor, int more, List<AbrasiveGrade> again) {
        Gloss target = GlossTarget.of(plan).orElseThrow().gloss();
        int passes = 0;
        for (PlannedStep step : field(plan)) {
            floor.work(step.grade(), middle(step) + more, middle(step));
            passes += middle(step) + more;
        }
        int repeated = 0;
        while (!again.isEmpty() && repeated < MOST_REPEATS && mean(floor) < target.gloss()) {
            for (AbrasiveGrade grade : again) {
                int usual = usual(plan, grade);
                floor.work(grade, usual, usual);
                passes += usual;
            }
            repeated++;
        }
        return new Outcome(floor.reaches(target) ? End.REACHED : End.SHORT, passes, repeated, belowBudget(plan, floor));
    }

    /** The planned passes of a grit; those of the plan's first for one that is coarser. */
    private static int usual(Recommendation plan, AbrasiveGrade grade) {
        return field(plan).stream()
                .filter(step -> step.grade().equals(grade))
                .findFirst()
                .map(FollowedJobsTest::middle)
                .orElseGet(() -> middle(field(plan).get(0)));
    }

    private static double mean(WorkedFloor floor) {
        return IntStream.range(0, 4)
                .mapToDouble(reading -> floor.read().gloss())
                .average()
                .orElseThrow();
    }

    /** A crew that notes what it does and does what it is told. */
    private static final class Crew {
        private final Recommendation plan;
        private final WorkedFloor floor;
        private final boolean meter;
        private final List<Entry> log = new ArrayList<>();
        private final String zone;
        private int clock = 8 * 60;
        private int passes;
        private int repeated;
        private int grades;

        Crew(Recommendation plan, WorkedFloor floor, boolean meter) {
            this.plan = plan;
            this.floor = floor;
            this.meter = meter;
            this.zone = plan.survey().zones().get(0).name();
        }

        private Moment now() {
            clock += 10;
            return new Moment(1 + clock / (24 * 60), clock % (24 * 60));
        }

        Outcome work() {
            tryTestArea(field(plan).get(0).grade());
            for (int i = 0; i < MOST_HOLD_POINTS; i++) {
                NextMove next = ADVISOR.followUp(plan, new JobLog("simulated", log));
                switch (next.move()) {
                    case GO_ON -> goOn(next);
                    case START_COARSER -> startCoarser(next);
                    case BACK_TO_START, TWO_GRADES_BACK, ONE_GRADE_BACK -> goOn(next);
                    case MORE_PASSES ->
                        more(next, next.morePasses().orElseThrow().high());
                    case MEND_AND_REPEAT -> {
                        floor.dressPad();
                        more(next, first(next).map(FollowedJobsTest::middle).orElse(4));
                    }
                    case LOOK_FIRST -> {
                        floor.clean();
                        look();
                    }
                    case EDGES_FIRST -> edges(next.at().orElseThrow().grade());
                    case STOP_AND_ASK -> {
                        return end(End.ASKED);
                    }
                    case RE_PLAN, TOUCH_UP_LANES -> throw new IllegalStateException("Nothing asks for " + next.move());
                    case ACCEPT -> {
                        return end(End.SHORT);
                    }
                }
            }
            throw new IllegalStateException("No end after " + log.size() + " entries");
        }

        private Outcome end(End otherwise) {
            Gloss target = GlossTarget.of(plan).orElseThrow().gloss();
            End end = floor.reaches(target) ? End.REACHED : otherwise;
            return new Outcome(end, passes, Math.max(0, repeated), belowBudget(plan, floor));
        }

        private void tryTestArea(AbrasiveGrade start) {
            boolean cleared = floor.clears(start);
            log.add(new Entry.Tried(now(), start, cleared ? TrialResult.CLEARED : TrialResult.NOT_CLEARED, cleared));
        }

        private static Optional<PlannedStep> first(NextMove next) {
            return field(next.ahead()).stream().findFirst();
        }

        private void startCoarser(NextMove next) {
            PlannedStep step = first(next).orElseThrow();
            if (next.at().isEmpty()) {
                tryTestArea(step.grade());
            } else {
                goOn(next);
            }
        }

        private void goOn(NextMove next) {
            PlannedStep step = first(next).orElseThrow();
            edges(step.grade());

            if (next.move() != Move.GO_ON) {
                repeated++;
            }
            work(step.grade(), middle(step), middle(step));
        }

        private void more(NextMove next, int count) {
            repeated++;
            work(next.at().orElseThrow().grade(), count, Math.max(1, count));
        }

        private void edges(AbrasiveGrade grade) {
            boolean planned =
                    plan.plan().orElseThrow().tracks().stream().anyMatch(track -> track.kind() == TrackKind.EDGE);
            if (planned) {
                log.add(new Entry.Worked(now(), TrackKind.EDGE, grade, 8, Optional.empty(), Optional.empty()));
            }
        }

        private void work(AbrasiveGrade grade, int count, int usual) {
            floor.work(grade, count, usual);
            passes += count;
            log.add(new Entry.Worked(now(), TrackKind.OPEN_FIELD, grade, count, Optional.empty(), Optional.empty()));
            look();
            if (meter && grade.equals(lastGrade(plan).get(0))) {
                read();
            }
        }

        private void look() {
            log.add(new Entry.Looked(
                    now(),
                    zone,
                    FaceState.CLEAN_DRY,
                    Optional.of(floor.look()),
                    Optional.of(floor.filmLies() ? Presence.PRESENT : Presence.NONE),
                    Optional.of(floor.padClosed() ? PadLook.CLOSED : PadLook.OPEN),
                    Optional.of(EdgeLook.AS_FIELD),
                    Optional.of(Set.of())));
        }

        private void read() {
            Moment at = now();
            for (int spot = 0; spot < 2; spot++) {
                for (Direction direction : Direction.values()) {
                    log.add(new Entry.Read(
                            at,
                            new Reading(
                                    "spot " + spot,
                                    zone,
                                    direction,
                                    Geometry.DEG_60,
                                    floor.read(),
                                    FaceState.CLEAN_DRY)));
                }
            }
        }
    }
}
