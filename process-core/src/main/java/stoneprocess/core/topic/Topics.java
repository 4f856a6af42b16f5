package stoneprocess.core.topic;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;

/**
 * The table of topics: every decision with its stage, subject, policy and domain, in the order in which they close. A
 * rule contributes to these and to nothing else.
 */
public final class Topics {
    public static final Choice<Family> STONE =
            Choice.of("stone", Stage.SURVEY, Scope.FLOOR, PolicyKind.REMAINS, Family.class);

    public static final Choice<Verdict> VERDICT = Choice.of(
                    "verdict", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.PRECEDENCE, Verdict.class)
            .cautiousFirst()
            .whenUncertain(Verdict.HOLD);
    public static final Choice<Finish> FINISH = Choice.of(
                    "finish", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ONE, Finish.class)
            .cautiousFirst()
            .blocking();
    public static final Choice<Bond> BONDS =
            Choice.of("bonds", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.REMAINS, Bond.class);
    public static final Choice<Task> PREPARATION =
            Choice.of("preparation", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ALL, Task.class);

    public static final Choice<Cut> FIRST_CUT = Choice.of(
                    "first-cut", Stage.FIRST_CUT, Scope.TRACK, PolicyKind.ONE, Cut.class)
            .cautiousFirst()
            .blocking();
    public static final Choice<Repair> REPAIRS =
            Choice.of("repairs", Stage.FIRST_CUT, Scope.FLOOR, PolicyKind.ALL, Repair.class);

    public static final Choice<Finding> FINDINGS =
            Choice.of("findings", Stage.REVIEW, Scope.FLOOR, PolicyKind.ALL, Finding.class);
    public static final Choice<Fault> CAUSES =
            Choice.of("causes", Stage.SIGNS, Scope.FLOOR, PolicyKind.RANKED, Fault.class);
    public static final Choice<Move> MOVE = Choice.of(
                    "move", Stage.NEXT, Scope.FLOOR, PolicyKind.PRECEDENCE, Move.class)
            .whenUncertain(Move.LOOK_FIRST);
    public static final Choice<SiteCheck> SITE_CHECKS =
            Choice.of("site-checks", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, SiteCheck.class);
    public static final Choice<Mend> MENDS = Choice.of("mends", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, Mend.class);
    public static final Choice<Ask> ASKS = Choice.of("asks", Stage.NEXT, Scope.FLOOR, PolicyKind.ALL, Ask.class);

    public static final Choice<LastGrit> LAST_GRIT =
            Choice.of("last-grit", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.ONE, LastGrit.class);
    public static final Choice<StepRule> STEP_RULE =
            Choice.of("step-rule", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.PRECEDENCE, StepRule.class);
    public static final Choice<TransitionUse> TRANSITION =
            Choice.of("transition", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.PRECEDENCE, TransitionUse.class);
    public static final Choice<WorkMethod> METAL_METHOD = Choice.of(
                    "metal-method", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.ONE, WorkMethod.class)
            .cautiousFirst();
    public static final Derived<Grit> GRIT_PATH =
            Derived.grits("grit-path", Stage.SEQUENCE, Scope.TRACK, PolicyKind.PATH);
    public static final Derived<Grit> TEST_CUTS =
            Derived.grits("test-cuts", Stage.SEQUENCE, Scope.FLOOR, PolicyKind.COMPUTED);

    public static final Choice<MachineClass> MACHINE = Choice.of(
                    "machine", Stage.EQUIPMENT, Scope.STEP, PolicyKind.FEWEST_CHANGES, MachineClass.class)
            .blocking();
    public static final Choice<AddedWeight> ADDED_WEIGHT = Choice.of(
                    "added-weight", Stage.EQUIPMENT, Scope.STEP, PolicyKind.ONE, AddedWeight.class)
            .cautiousFirst();

    public static final Choice<WaterLevel> WATER_LEVEL = Choice.of(
                    "water-level", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ONE, WaterLevel.class)
            .cautiousFirst();
    public static final Derived<Range<Integer>> PASSES =
            Derived.counts("passes", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.COMPUTED);
    public static final Derived<Range<Volume>> LITRES =
            Derived.volumes("litres", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.COMPUTED);
    public static final Choice<Handling> HANDLING =
            Choice.of("handling", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ALL, Handling.class);
    public static final Choice<PickUp> PICK_UP =
            Choice.of("pick-up", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.PRECEDENCE, PickUp.class);
    public static final Choice<Check> CHECKS =
            Choice.of("checks", Stage.WATER_AND_PASSES, Scope.STEP, PolicyKind.ALL, Check.class);
    public static final Choice<SlurryRoute> SLURRY =
            Choice.of("slurry", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, SlurryRoute.class);

    public static final Choice<TestArea> TEST_AREA =
            Choice.of("test-area", Stage.FINISHING, Scope.FLOOR, PolicyKind.PRECEDENCE, TestArea.class);
    public static final Choice<PolishingAgent> POLISHING_AGENT = Choice.of(
                    "polishing-agent", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, PolishingAgent.class)
            .cautiousFirst();
    public static final Choice<Densifier> DENSIFIER = Choice.of(
                    "densifier", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, Densifier.class)
            .cautiousFirst();
    public static final Choice<Sealer> SEALER = Choice.of(
                    "sealer", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, Sealer.class)
            .cautiousFirst();
    public static final Choice<FinishTask> FINISH_TASKS =
            Choice.of("finish-tasks", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, FinishTask.class);
    public static final Choice<Upkeep> UPKEEP =
            Choice.of("upkeep", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, Upkeep.class);
    public static final Choice<Acceptance> ACCEPTANCES =
            Choice.of("acceptances", Stage.FINISHING, Scope.FLOOR, PolicyKind.ALL, Acceptance.class);

    public static final Choice<Shortfall> SHORTFALLS =
            Choice.of("shortfalls", Stage.SAFETY, Scope.FLOOR, PolicyKind.ALL, Shortfall.class);
    public static final Choice<Hazard> WARNINGS =
            Choice.of("warnings", Stage.SAFETY, Scope.FLOOR, PolicyKind.ALL, Hazard.class);

    private static final List<Topic<?>> ALL = List.of(
            STONE,
            VERDICT,
            FINISH,
            BONDS,
            PREPARATION,
            FIRST_CUT,
            REPAIRS,
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
            WATER_LEVEL,
            PASSES,
            LITRES,
            HANDLING,
            PICK_UP,
            CHECKS,
            SLURRY,
            TEST_AREA,
            POLISHING_AGENT,
            DENSIFIER,
            SEALER,
            FINISH_TASKS,
            UPKEEP,
            ACCEPTANCES,
            SHORTFALLS,
            WARNINGS);

    private static final Map<String, Topic<?>> BY_ID =
            ALL.stream().collect(Collectors.toMap(Topic::id, Function.identity()));
    private static final Map<Stage, List<Topic<?>>> BY_STAGE =
            ALL.stream().collect(Collectors.groupingBy(Topic::stage, Collectors.toUnmodifiableList()));

    private Topics() {}

    /** All topics in the order in which they close. */
    public static List<Topic<?>> all() {
        return ALL;
    }

    /** The topics of one stage in the order in which they close. */
    public static List<Topic<?>> of(Stage stage) {
        return BY_STAGE.getOrDefault(Objects.requireNonNull(stage, "stage"), List.of());
    }

    /**
     * The topic with the given id.
     *
     * @throws InvalidInputException when there is none
     */
    public static Topic<?> named(String id) {
        Topic<?> topic = BY_ID.get(id);
        if (topic == null) {
            throw new InvalidInputException(
                    "topic",
                    id,
                    "one of " + String.join(", ", ALL.stream().map(Topic::id).toList()));
        }
        return topic;
    }

    /**
     * The topic with the given id, of those that rules speak about.
     *
     * @throws InvalidInputException when there is none, and for a derived topic
     */
    public static Choice<?> choice(String id) {
        if (BY_ID.get(id) instanceof Choice<?> choice) {
            return choice;
        }
        throw new InvalidInputException(
                "topic",
                id,
                "one of "
                        + ALL.stream()
                                .filter(Choice.class::isInstance)
                                .map(Topic::id)
                                .collect(Collectors.joining(", ")));
    }
}
