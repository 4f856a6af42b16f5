package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.text.FollowText;
import stoneprocess.rules.text.document.Texts;

/** Followed jobs, drawn at random, beside the plan that they follow. */
class FollowAgreesWithPlanTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Engine ENGINE = new Engine(ShippedRules.load());
    private static final FollowText TEXT = new FollowText(ADVISOR.rulebase().cards());
    private static final int RESTARTS = 100;
    private static final int MOST_DRAWN = 300;
    private static final Pattern RULE_AT_END = Pattern.compile("\\((CAU-\\d+)\\)");

    private record Followed(Recommendation plan, JobLog log, NextMove next) {
        String text() {
            return Texts.english().page(TEXT.document(plan, log, next));
        }

        List<PlannedStep> stepsAhead() {
            return next.ahead().plan().map(Plan::tracks).orElse(List.of()).stream()
                    .map(Track::steps)
                    .flatMap(List::stream)
                    .toList();
        }
    }

    private static List<Followed> jobs;

    @BeforeAll
    static void follow() {
        jobs = IntStream.range(0, 150)
                .mapToObj(seed -> new RandomJob(seed, seed % 2 == 0))
                .map(job -> {
                    JobLog log = new JobLog("drawn", job.entries());
                    return new Followed(job.plan(), log, ADVISOR.followUp(job.plan(), log));
                })
                .toList();
    }

    @Test
    void no_next_grit_is_promised_when_none_is_left() {
        int without = 0;
        for (Followed job : jobs) {
            String first = job.text().lines().skip(2).collect(Collectors.joining(" "));
            if (job.stepsAhead().isEmpty()) {
                without++;
                assertThat(first).doesNotContain("GO ON to the next grit");
            }
        }
        assertThat(without).isGreaterThan(5);
    }

    @Test
    void each_cause_shows_what_speaks_for_it_and_no_reason_is_repeated_under_several() {
        int shared = 0;
        for (Followed job : jobs) {
            List<String> naming = job.next().causes().stream()
                    .flatMap(cause ->
                            cause.speaksFor().stream().map(Reason::rule).distinct())
                    .toList();
            Set<String> named = new TreeSet<>(naming);
            shared += naming.size() > named.size() ? 1 : 0;
            String causes = section(job.text());
            for (String rule : named) {
                assertThat(RULE_AT_END
                                .matcher(causes)
                                .results()
                                .filter(found -> found.group(1).equals(rule))
                                .count())
                        .as("%s in %s", rule, causes)
                        .isEqualTo(1);
            }
        }
        assertThat(shared).isGreaterThan(5);
    }

    private static String section(String text) {
        int from = text.indexOf("Rules behind this answer");
        if (from < 0) {
            return "";
        }
        int to = text.indexOf("\n\n", from);
        return text.substring(from, to < 0 ? text.length() : to);
    }

    @Test
    void what_is_planned_anew_makes_the_passes_that_the_plan_made_for_the_same_grits() {
        int compared = 0;
        for (Followed job : jobs) {
            for (Track track : job.next().ahead().plan().map(Plan::tracks).orElse(List.of())) {
                for (int i = 1; i < track.steps().size(); i++) {
                    PlannedStep before = track.steps().get(i - 1);
                    PlannedStep step = track.steps().get(i);
                    Optional<PlannedStep> same = planned(job.plan().steps(track.kind()), before, step);
                    if (same.isPresent()) {
                        compared++;
                        assertThat(step.passes()).isEqualTo(same.get().passes());
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(50);
    }

    private static Optional<PlannedStep> planned(List<PlannedStep> plan, PlannedStep before, PlannedStep step) {
        for (int i = 1; i < plan.size(); i++) {
            PlannedStep same = plan.get(i);
            if (plan.get(i - 1).grade().equals(before.grade())
                    && same.grade().equals(step.grade())
                    && same.machine() == step.machine()
                    && same.addedMass().equals(step.addedMass())) {
                return Optional.of(same);
            }
        }
        return Optional.empty();
    }

    /** Floors whose test area was not cleared by the planned start, drawn until there are enough of them. */
    @Test
    void a_restart_is_what_a_plan_with_that_first_cut_would_start_with() {
        int restarts = 0;
        int drawn = 0;
        for (int seed = 0; drawn < MOST_DRAWN && restarts < RESTARTS; seed++) {
            drawn++;
            Optional<Followed> job = notCleared(new Random(seed));
            List<PlannedStep> ahead = job.map(known -> known.next().ahead().steps(TrackKind.OPEN_FIELD))
                    .orElse(List.of());
            if (ahead.isEmpty() || job.orElseThrow().next().move() != Move.START_COARSER) {
                continue;
            }
            AbrasiveGrade start = ahead.get(0).grade();
            Cut cut = Cut.of(start);
            if (cut.bond() == start.bond() && cut.number() == start.number()) {
                restarts++;
                assertThat(ahead.stream()
                                .map(step -> step.grade().key() + " " + step.passes())
                                .toList())
                        .as("floor %d", seed)
                        .isEqualTo(plannedFrom(job.orElseThrow(), cut));
            }
        }
        System.out.printf("restarts beside the plan from the same facts: %d of %d drawn jobs%n", restarts, drawn);
        assertThat(restarts).isGreaterThanOrEqualTo(RESTARTS);
    }

    private static Optional<Followed> notCleared(Random random) {
        List<ScratchClass> looks = List.of(ScratchClass.SEEN, ScratchClass.FELT_BY_NAIL, ScratchClass.FELT_BY_COIN);
        Damage[] damages = {
            Floors.dull(10 + random.nextInt(90)),
            Floors.scratched(looks.get(random.nextInt(looks.size())), 5 + random.nextInt(90))
        };
        FloorSurvey.Builder floor = random.nextBoolean() ? Floors.calciteMarble(damages) : Floors.damaged(damages);
        Goal[] goals = {Goal.HONE, Goal.SATIN, Goal.SEMI_GLOSS, Goal.POLISH, Goal.HIGH_GLOSS};
        MachineClass machine = random.nextBoolean() ? MachineClass.SINGLE_DISC : MachineClass.PLANETARY;
        Recommendation plan = ADVISOR.recommend(floor.set(SurveyField.GOAL, goals[random.nextInt(goals.length)])
                .set(SurveyField.AREA, new Area(5 + random.nextInt(400)))
                .set(SurveyField.THICKNESS, new Length(12 + random.nextInt(20)))
                .set(SurveyField.MACHINES, EnumSet.of(machine, MachineClass.EDGE_TOOL))
                .build());
        List<PlannedStep> field = plan.steps(TrackKind.OPEN_FIELD);
        if (field.isEmpty()) {
            return Optional.empty();
        }
        JobLog log = new JobLog(
                "drawn",
                List.of(new Entry.Tried(new Moment(1, 480), field.get(0).grade(), TrialResult.NOT_CLEARED, false)));
        return Optional.of(new Followed(plan, log, ADVISOR.followUp(plan, log)));
    }

    private static List<String> plannedFrom(Followed job, Cut cut) {
        Decision<Cut> pin = new Decision<>(
                Topics.FIRST_CUT, Subject.OPEN_FIELD, List.of(cut), List.of(), List.of(), List.of(), List.of());
        Situation facts = new Situation(
                job.next().ahead().survey(), job.plan().parameters(), job.plan().sequence());
        Situation planned = Runner.run(ENGINE::start, Program.RECOMMEND, facts, List.of(pin), UnaryOperator.identity())
                .situation();
        return planned.values(Topics.GRIT_PATH, Subject.OPEN_FIELD).stream()
                .map(grit -> grit.key() + " "
                        + planned.values(Topics.PASSES, new Subject.OfStep(TrackKind.OPEN_FIELD, grit.key()))
                                .get(0))
                .toList();
    }
}
