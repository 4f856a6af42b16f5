package stoneprocess.core.json;

import java.util.List;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.topic.Subject;

/** Comparisons of two rulebases as JSON. Lossless and versioned. */
public final class ComparisonJson {
    private static final String WHAT = "comparison";

    private ComparisonJson() {}

    /**
     * Prints a comparison.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(Comparison comparison) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", Comparison.FORMAT)
                .put("one", RecommendationJson.tree(comparison.one()))
                .put("other", RecommendationJson.tree(comparison.other()))
                .put("floors", comparison.floors())
                .put("differing", Fields.list(comparison.differing(), ComparisonJson::tree))
                .tree()));
    }

    /**
     * Reads a comparison back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static Comparison read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static Comparison read(Node root) {
        root.form(WHAT, Comparison.FORMAT).only(List.of("format", "one", "other", "floors", "differing"));
        return new Comparison(
                RecommendationJson.stamp(root.get("one")),
                RecommendationJson.stamp(root.get("other")),
                root.get("floors").integer(0),
                root.get("differing").list(ComparisonJson::floor));
    }

    private static Object tree(Comparison.Floor floor) {
        return new Fields()
                .put("index", floor.index())
                .put("title", floor.title())
                .put("one", floor.one().key())
                .put("other", floor.other().key())
                .put("decisions", Fields.list(floor.decisions(), ComparisonJson::tree))
                .tree();
    }

    private static Comparison.Floor floor(Node node) {
        node.only(List.of("index", "title", "one", "other", "decisions"));
        return new Comparison.Floor(
                node.get("index").integer(0),
                node.get("title").text(),
                node.get("one").term(Status.class),
                node.get("other").term(Status.class),
                node.get("decisions").list(ComparisonJson::differs));
    }

    private static Object tree(Comparison.Differs differs) {
        return new Fields()
                .put("topic", differs.topic())
                .put("subject", differs.subject().key())
                .put("one", tree(differs.one()))
                .put("other", tree(differs.other()))
                .put("rules-of-one", differs.rulesOfOne())
                .put("rules-of-other", differs.rulesOfOther())
                .put("through", differs.through())
                .tree();
    }

    private static Comparison.Differs differs(Node node) {
        node.only(List.of("topic", "subject", "one", "other", "rules-of-one", "rules-of-other", "through"));
        Node subject = node.get("subject");
        return new Comparison.Differs(
                node.get("topic").text(),
                Subject.parse(subject.text(), subject.path()),
                side(node.get("one")),
                side(node.get("other")),
                node.get("rules-of-one").texts(),
                node.get("rules-of-other").texts(),
                node.get("through").texts());
    }

    private static Object tree(Comparison.Side side) {
        return new Fields()
                .put("end", side.end().key())
                .put("values", side.values())
                .tree();
    }

    private static Comparison.Side side(Node node) {
        node.only(List.of("end", "values"));
        return new Comparison.Side(
                node.get("end").term(Comparison.End.class), node.get("values").texts());
    }
}
