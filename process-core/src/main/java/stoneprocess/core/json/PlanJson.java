package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Step;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.SlurryRoute;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;

/** The plan's part of a recommendation. */
final class PlanJson {
    private PlanJson() {}

    static Object tree(Plan plan) {
        return new Fields()
                .put("preparation", Fields.list(plan.preparation(), PlanJson::tree))
                .put("acceptances", Term.keys(plan.acceptances()))
                .put("test-area", plan.testArea().key())
                .put(
                        "test-cuts",
                        plan.testCuts().stream().map(AbrasiveGrade::key).toList())
                .put("repairs", Term.keys(plan.repairs()))
                .putIf("finish", plan.finish().map(Term::key))
                .put("tracks", Fields.list(plan.tracks(), PlanJson::tree))
                .put("shortfalls", Term.keys(plan.shortfalls()))
                .put("slurry", Term.keys(plan.slurry()))
                .put("polishing-agent", plan.polishingAgent().key())
                .put("densifier", plan.densifier().key())
                .put("sealer", plan.sealer().key())
                .put("finish-tasks", Term.keys(plan.finishTasks()))
                .put("upkeep", Term.keys(plan.upkeep()))
                .tree();
    }

    static Plan read(Node node, GritSequence sequence) {
        node.only(List.of(
                "preparation",
                "acceptances",
                "test-area",
                "test-cuts",
                "repairs",
                "finish",
                "tracks",
                "shortfalls",
                "slurry",
                "polishing-agent",
                "densifier",
                "sealer",
                "finish-tasks",
                "upkeep"));
        return new Plan(
                node.get("preparation").list(PlanJson::preparation),
                terms(node.get("acceptances"), Acceptance.class),
                node.get("test-area").term(TestArea.class),
                node.get("test-cuts").list(grade -> sequence.get(grade.text(), grade.path())),
                terms(node.get("repairs"), Repair.class),
                node.optional("finish").map(finish -> finish.term(Finish.class)),
                node.get("tracks").list(track -> track(track, sequence)),
                terms(node.get("shortfalls"), Shortfall.class),
                terms(node.get("slurry"), SlurryRoute.class),
                node.get("polishing-agent").term(PolishingAgent.class),
                node.get("densifier").term(Densifier.class),
                node.get("sealer").term(Sealer.class),
                terms(node.get("finish-tasks"), FinishTask.class),
                terms(node.get("upkeep"), Upkeep.class));
    }

    static Object tree(Preparation preparation) {
        return new Fields()
                .put("task", preparation.task().key())
                .putIf("rest", preparation.rest().map(Fields::range))
                .tree();
    }

    static Preparation preparation(Node node) {
        node.only(List.of("task", "rest"));
        return new Preparation(
                node.get("task").term(Task.class),
                node.optional("rest").map(rest -> range(rest, Dimension.TIME, TimeSpan.class)));
    }

    private static Object tree(Track track) {
        return new Fields()
                .put("kind", track.kind().key())
                .put("steps", Fields.list(track.steps(), PlanJson::tree))
                .tree();
    }

    private static Track track(Node node, GritSequence sequence) {
        node.only(List.of("kind", "steps"));
        return new Track(
                node.get("kind").term(TrackKind.class), node.get("steps").list(step -> step(step, sequence)));
    }

    private static Object tree(Step step) {
        return new Fields()
                .put("grade", step.grade().key())
                .put("method", step.method().key())
                .put("machine", step.machine().key())
                .put("weight", step.weight().key())
                .put("added-mass", Fields.range(step.addedMass()))
                .put("water", step.water().key())
                .putIf("water-per-pass", step.litresPerPass().map(Fields::range))
                .put("passes", Fields.passes(step.passes()))
                .put("handling", Term.keys(step.handling()))
                .put("pick-up", step.pickUp().key())
                .put("checks", Term.keys(step.checks()))
                .tree();
    }

    private static Step step(Node node, GritSequence sequence) {
        node.only(List.of(
                "grade",
                "method",
                "machine",
                "weight",
                "added-mass",
                "water",
                "water-per-pass",
                "passes",
                "handling",
                "pick-up",
                "checks"));
        Node grade = node.get("grade");
        Optional<Range<Volume>> litres =
                node.optional("water-per-pass").map(range -> range(range, Dimension.VOLUME, Volume.class));
        return new Step(
                sequence.get(grade.text(), grade.path()),
                node.get("method").term(WorkMethod.class),
                node.get("machine").term(MachineClass.class),
                node.get("weight").term(AddedWeight.class),
                range(node.get("added-mass"), Dimension.MASS, Mass.class),
                node.get("water").term(WaterLevel.class),
                litres,
                passes(node.get("passes")),
                terms(node.get("handling"), Handling.class),
                node.get("pick-up").term(PickUp.class),
                terms(node.get("checks"), Check.class));
    }

    private static <E extends Enum<E> & Term> List<E> terms(Node node, Class<E> type) {
        return new ArrayList<>(node.terms(type));
    }

    static <Q extends Quantity> Range<Q> range(Node node, Dimension dimension, Class<Q> type) {
        node.only(List.of("low", "high", "unit"));
        Unit unit = Unit.parse(dimension, node.get("unit").text(), node.path());
        Q low = type.cast(node.get("low").quantity(unit));
        Q high = type.cast(node.get("high").quantity(unit));
        return node.checked(() -> Range.of(low, high));
    }

    static Range<Integer> passes(Node node) {
        node.only(List.of("low", "high"));
        int low = node.get("low").integer();
        int high = node.get("high").integer();
        return node.checked(() -> Range.of(low, high));
    }
}
