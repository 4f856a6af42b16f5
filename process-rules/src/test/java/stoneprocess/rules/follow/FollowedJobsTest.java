package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
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
 * A thousand jobs on floors that answer by the model of progress, done three times over: by the advice to the end, by
 * always going on, and by always adding two passes. No cut of the advice goes below what may be taken off.
 */
class FollowedJobsTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final int JOBS = 1000;
    private static final int MOST_HOLD_POINTS = 60;
    private static final List<AbrasiveGrade> RESIN = GritSequence.standard().grades(Bond.RESIN);
    private static final List<Recommendation> PLANS = plans();

    /** How a job ended. */
    private enum End {
        REACHED,
        ASKED,
        SHORT
    }

    private record Outcome(End end, int passes, int repeated, boolean belowBudget) {}

    @Test
    void the_advice_reaches_the_finish_oftener_than_naive_work_and_never_cuts_below_the_budget() {
        Map<String, List<Outcome>> outcomes = new TreeMap<>();
        outcomes.put("always go on", all(job -> naive(plan(job), job, 0)));
        outcomes.put("always add two passes", all(job -> naive(plan(job), job, 2)));
        outcomes.put("by the advice", all(job -> advised(plan(job), job)));

        System.out.println("1000 simulated jobs    reached  asked  short  passes  grades again  below budget");
        outcomes.forEach((name, all) -> System.out.printf(
                Locale.ROOT,
                "%-22s %6.1f%% %5.1f%% %5.1f%% %7.1f %13.2f %13d%n",
                name,
                share(all, End.REACHED),
                share(all, End.ASKED),
                share(all, End.SHORT),
                all.stream().mapToInt(Outcome::passes).average().orElseThrow(),
                all.stream().mapToInt(Outcome::repeated).average().orElseThrow(),
                all.stream().filter(Outcome::belowBudget).count()));
        List<Outcome> advised = outcomes.get("by the advice");
        assertThat(advised).noneMatch(Outcome::belowBudget);
        assertThat(share(advised, End.REACHED)).isGreaterThan(share(outcomes.get("always go on"), End.REACHED) + 10);
        assertThat(share(advised, End.REACHED))
                .isGreaterThan(share(outcomes.get("always add two passes"), End.REACHED) + 5);
        assertThat(share(advised, End.SHORT)).isLessThan(share(outcomes.get("always add two passes"), End.SHORT));
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

    private static SimulatedFloor floor(Recommendation plan, int job) {
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

    private static int middle(PlannedStep step) {
        return (step.passes().low() + step.passes().high()) / 2;
    }

    private static boolean belowBudget(Recommendation plan, SimulatedFloor floor) {
        double thickness = plan.survey()
                .answer(SurveyField.THICKNESS)
                .value()
                .orElseThrow()
                .millimetres();
        double share = plan.parameters().get("removal-share.stone", Share.class).percent();
        return floor.removed() > thickness * share / 100;
    }

    private static Outcome naive(Recommendation plan, int job, int more) {
        SimulatedFloor floor = floor(plan, job);
        int passes = 0;
        for (PlannedStep step : field(plan)) {
            floor.work(step.grade(), middle(step) + more, middle(step));
            passes += middle(step) + more;
        }
        Gloss target = GlossTarget.of(plan).orElseThrow().gloss();
        return new Outcome(floor.reaches(target) ? End.REACHED : End.SHORT, passes, 0, belowBudget(plan, floor));
    }

    private static Outcome advised(Recommendation plan, int job) {
        Crew crew = new Crew(plan, floor(plan, job), job % 2 == 0);
        return crew.work();
    }

    /** A crew that notes what it does and does what it is told. */
    private static final class Crew {
        private final Recommendation plan;
        private final SimulatedFloor floor;
        private final boolean meter;
        private final List<Entry> log = new ArrayList<>();
        private final String zone;
        private int clock = 8 * 60;
        private int passes;
        private int repeated;
        private int grades;

        Crew(Recommendation plan, SimulatedFloor floor, boolean meter) {
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
            if (meter && grade.number() >= 3000) {
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
