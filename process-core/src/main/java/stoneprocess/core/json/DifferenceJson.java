package stoneprocess.core.json;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.Split;
import stoneprocess.core.answer.TrackDifference;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.topic.TrackKind;

/** Differences of two recommendations as JSON: lossless, versioned, the same bytes on every machine. */
public final class DifferenceJson {
    private static final String WHAT = "difference";

    private DifferenceJson() {}

    /**
     * Prints a difference.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(Difference difference) {
        return Jackson.with(() -> Tree.print(tree(difference)));
    }

    /**
     * Reads a difference back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static Difference read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    static Map<String, Object> tree(Difference difference) {
        return new Fields()
                .put("format", Difference.FORMAT)
                .put("one", difference.one().key())
                .put("other", difference.other().key())
                .put("matters", Fields.list(difference.matters(), DifferenceJson::tree))
                .put("tracks", Fields.list(difference.tracks(), DifferenceJson::tree))
                .put("preparation", split(difference.preparation(), PlanJson::tree))
                .put("warnings", split(difference.warnings(), RecommendationJson::tree))
                .put("questions", split(difference.questions(), field -> field))
                .put("counter-offers", split(difference.counterOffers(), RecommendationJson::tree))
                .put("answers", split(difference.answers(), AnswerJson::tree))
                .put("parameters", difference.parameters())
                .put("rulebases", split(difference.rulebases(), hash -> hash))
                .tree();
    }

    static Difference read(Node root) {
        root.form(WHAT, Difference.FORMAT)
                .only(List.of(
                        "format",
                        "one",
                        "other",
                        "matters",
                        "tracks",
                        "preparation",
                        "warnings",
                        "questions",
                        "counter-offers",
                        "answers",
                        "parameters",
                        "rulebases"));
        return new Difference(
                root.get("one").term(Status.class),
                root.get("other").term(Status.class),
                root.get("matters").list(DifferenceJson::matter),
                root.get("tracks").list(DifferenceJson::track),
                split(root.get("preparation"), PlanJson::preparation),
                split(root.get("warnings"), RecommendationJson::warning),
                split(root.get("questions"), Node::text),
                split(root.get("counter-offers"), RecommendationJson::offer),
                split(root.get("answers"), AnswerJson::fieldAnswer),
                root.get("parameters").texts(),
                split(root.get("rulebases"), Node::text));
    }

    private static <T> Object split(Split<T> split, Function<T, Object> print) {
        return new Fields()
                .put("one", Fields.list(split.one(), print))
                .put("other", Fields.list(split.other(), print))
                .tree();
    }

    private static <T> Split<T> split(Node node, Function<Node, T> read) {
        node.only(List.of("one", "other"));
        return new Split<>(node.get("one").list(read), node.get("other").list(read));
    }

    private static Object tree(MatterDifference difference) {
        return new Fields()
                .put("matter", AnswerJson.tree(difference.matter()))
                .put("one", tree(difference.one()))
                .put("other", tree(difference.other()))
                .tree();
    }

    private static MatterDifference matter(Node node) {
        node.only(List.of("matter", "one", "other"));
        return new MatterDifference(
                AnswerJson.matter(node.get("matter")), side(node.get("one")), side(node.get("other")));
    }

    private static Object tree(Side side) {
        return new Fields()
                .put("closing", side.closing().key())
                .put("values", side.values())
                .put("rules", side.rules())
                .tree();
    }

    private static Side side(Node node) {
        node.only(List.of("closing", "values", "rules"));
        return new Side(
                node.get("closing").term(Closing.class),
                node.get("values").texts(),
                node.get("rules").texts());
    }

    private static Object tree(TrackDifference track) {
        return new Fields()
                .put("track", track.track().key())
                .put("one", track.one())
                .put("other", track.other())
                .tree();
    }

    private static TrackDifference track(Node node) {
        node.only(List.of("track", "one", "other"));
        return new TrackDifference(
                node.get("track").term(TrackKind.class),
                node.get("one").texts(),
                node.get("other").texts());
    }
}
