package stoneprocess.core.topic;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;

/**
 * The table of topics: every decision with its stage, subject, policy and domain, in the order in which they close. A
 * rule contributes to these and to nothing else.
 */
public final class Topics {
    public static final Topic<Family> STONE =
            Topic.of("stone", Stage.SURVEY, Scope.FLOOR, PolicyKind.REMAINS, Family.class);

    public static final Topic<Verdict> VERDICT = Topic.of(
                    "verdict", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.PRECEDENCE, Verdict.class)
            .cautiousFirst()
            .whenUncertain(Verdict.HOLD);
    public static final Topic<Finish> FINISH = Topic.of(
                    "finish", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ONE, Finish.class)
            .cautiousFirst()
            .blocking();
    public static final Topic<Bond> BONDS =
            Topic.of("bonds", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.REMAINS, Bond.class);
    public static final Topic<Task> PREPARATION =
            Topic.of("preparation", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ALL, Task.class);

    public static final Topic<Cut> FIRST_CUT = Topic.of(
                    "first-cut", Stage.FIRST_CUT, Scope.TRACK, PolicyKind.ONE, Cut.class)
            .cautiousFirst()
            .blocking();
    public static final Topic<Repair> REPAIRS =
            Topic.of("repairs", Stage.FIRST_CUT, Scope.FLOOR, PolicyKind.ALL, Repair.class);
    public static final Topic<TestArea> TEST_AREA =
            Topic.of("test-area", Stage.FIRST_CUT, Scope.FLOOR, PolicyKind.PRECEDENCE, TestArea.class);

    public static final Topic<Finding> FINDINGS =
            Topic.of("findings", Stage.REVIEW, Scope.FLOOR, PolicyKind.ALL, Finding.class);
    public static final Topic<Fault> CAUSES =
            Topic.of("causes", Stage.SIGNS, Scope.FLOOR, PolicyKind.RANKED, Fault.class);
    public static final Topic<Move> MOVE = Topic.of("move", Stage.NEXT, Scope.FLOOR, PolicyKind.PRECEDENCE, Move.class)
            .whenUncertain(Move.LOOK_FIRST);
    public static final Topic<SiteCheck> SITE_CHECKS =
            Topic.of("site-checks", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, SiteCheck.class);
    public static final Topic<Mend> MENDS = Topic.of("mends", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, Mend.class);
    public static final Topic<Ask> ASKS = Topic.of("asks", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, Ask.class);

    public static final Topic<LastGrit> LAST_GRIT =
            Topic.of("last-grit", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.ONE, LastGrit.class);
    public static final Topic<StepRule> STEP_RULE =
            Topic.of("step-rule", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.PRECEDENCE, StepRule.class);
    public static final Topic<TransitionUse> TRANSITION =
            Topic.of("transition", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.PRECEDENCE, TransitionUse.class);
    public static final Topic<WorkMethod> METAL_METHOD = Topic.of(
                    "metal-method", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.ONE, WorkMethod.class)
            .cautiousFirst();
    public static final Topic<Term> GRIT_PATH =
            Topic.computed("grit-path", Stage.SEQUENCE, Scope.TRACK, PolicyKind.PATH);
    public static final Topic<Term> TEST_CUTS =
            Topic.computed("test-cuts", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.COMPUTED);

    public static final Topic<MachineClass> MACHINE = Topic.of(
                    "machine", Stage.EQUIPMENT, Scope.STEP, PolicyKind.FEWEST_CHANGES, MachineClass.class)
            .blocking();
    public static final Topic<AddedWeight> ADDED_WEIGHT = Topic.of(
                    "added-weight", Stage.EQUIPMENT, Scope.STEP, PolicyKind.ONE, AddedWeight.class)
            .cautiousFirst();

    public static final Topic<Shortfall> SHORTFALLS =
            Topic.of("shortfalls", Stage.EQUIPMENT, Scope.FLOOR, PolicyKind.ALL, Shortfall.class);

    public static final Topic<WaterLevel> WATER_LEVEL = Topic.of(
                    "water-level", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ONE, WaterLevel.class)
            .cautiousFirst();
    public static final Topic<Term> PASSES =
            Topic.computed("passes", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.COMPUTED);
    public static final Topic<Term> LITRES =
            Topic.computed("litres", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.COMPUTED);
    public static final Topic<Handling> HANDLING =
            Topic.of("handling", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ALL, Handling.class);
    public static final Topic<PickUp> PICK_UP =
            Topic.of("pick-up", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.PRECEDENCE, PickUp.class);
    public static final Topic<Check> CHECKS =
            Topic.of("checks", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ALL, Check.class);
    public static final Topic<SlurryRoute> SLURRY =
            Topic.of("slurry", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, SlurryRoute.class);

    public static final Topic<PolishingAgent> POLISHING_AGENT = Topic.of(
                    "polishing-agent", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, PolishingAgent.class)
            .cautiousFirst();
    public static final Topic<Densifier> DENSIFIER = Topic.of(
                    "densifier", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, Densifier.class)
            .cautiousFirst();
    public static final Topic<Sealer> SEALER = Topic.of(
                    "sealer", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, Sealer.class)
            .cautiousFirst();
    public static final Topic<FinishTask> FINISH_TASKS =
            Topic.of("finish-tasks", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, FinishTask.class);
    public static final Topic<Upkeep> UPKEEP =
            Topic.of("upkeep", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, Upkeep.class);
    public static final Topic<Acceptance> ACCEPTANCES =
            Topic.of("acceptances", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, Acceptance.class);

    public static final Topic<Hazard> WARNINGS =
            Topic.of("warnings", Stage.SAFETY, Scope.FLOOR, PolicyKind.ALL, Hazard.class);

    private static final List<Topic<? extends Term>> ALL = List.of(
            STONE,
            VERDICT,
            FINISH,
            BONDS,
            PREPARATION,
            FIRST_CUT,
            REPAIRS,
            TEST_AREA,
            FINDINGS,
            CAUSES,
            MOVE,
            SITE_CHECKS,
            MENDS,
            ASKS,
            LAST_GRIT,
            STEP_RULE,
            TRANSITION,
            METAL_METHOD,
            GRIT_PATH,
            TEST_CUTS,
            MACHINE,
            ADDED_WEIGHT,
            SHORTFALLS,
            WATER_LEVEL,
            PASSES,
            LITRES,
            HANDLING,
            PICK_UP,
            CHECKS,
            SLURRY,
            POLISHING_AGENT,
            DENSIFIER,
            SEALER,
            FINISH_TASKS,
            UPKEEP,
            ACCEPTANCES,
            WARNINGS);

    private static final Map<String, Topic<? extends Term>> BY_ID =
            ALL.stream().collect(Collectors.toMap(Topic::id, Function.identity()));
    private static final Map<Stage, List<Topic<? extends Term>>> BY_STAGE =
            ALL.stream().collect(Collectors.groupingBy(Topic::stage, Collectors.toUnmodifiableList()));

    private Topics() {}

    /** All topics in the order in which they close. */
    public static List<Topic<? extends Term>> all() {
        return ALL;
    }

    /** The topics of one stage in the order in which they close. */
    public static List<Topic<? extends Term>> of(Stage stage) {
        return BY_STAGE.getOrDefault(stage, List.of());
    }

    /**
     * The topic with the given id.
     *
     * @throws InvalidInputException when there is none
     */
    public static Topic<? extends Term> named(String id) {
        Topic<? extends Term> topic = BY_ID.get(id);
        if (topic == null) {
            throw new InvalidInputException(
                    "topic",
                    id,
                    "one of " + String.join(", ", ALL.stream().map(Topic::id).toList()));
        }
        return topic;
    }
}
