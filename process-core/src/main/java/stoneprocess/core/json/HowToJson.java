package stoneprocess.core.json;

import java.util.List;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;

/** The smallest changes that give a value, as JSON. Lossless and versioned. */
public final class HowToJson {
    private static final String WHAT = "how-to";

    private HowToJson() {}

    /**
     * Prints an answer.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(HowTo howTo) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", HowTo.FORMAT)
                .put("topic", howTo.topic())
                .put("subject", howTo.subject().key())
                .put("wanted", howTo.wanted())
                .put("kind", howTo.kind().key())
                .put("ways", Fields.list(howTo.ways(), HowToJson::tree))
                .put("rulebase", RecommendationJson.tree(howTo.rulebase()))
                .tree()));
    }

    /**
     * Reads an answer back whose grades are of the usual sequence; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static HowTo read(String json) {
        return read(json, GritSequence.standard());
    }

    /**
     * Reads an answer back whose grades are of the given sequence.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static HowTo read(String json, GritSequence sequence) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT)), sequence));
    }

    private static HowTo read(Node root, GritSequence sequence) {
        root.form(WHAT, HowTo.FORMAT).only(List.of("format", "topic", "subject", "wanted", "kind", "ways", "rulebase"));
        Node subject = root.get("subject");
        return root.checkedParts(() -> new HowTo(
                root.get("topic").text(),
                Subject.parse(subject.text(), subject.path()),
                root.get("wanted").text(),
                root.get("kind").term(WayKind.class),
                root.get("ways").list(way -> way(way, sequence)),
                RecommendationJson.stamp(root.get("rulebase"))));
    }

    private static Object tree(Way way) {
        return new Fields()
                .put("changes", Fields.list(way.changes(), ChangeJson::tree))
                .tree();
    }

    private static Way way(Node node, GritSequence sequence) {
        node.only(List.of("changes"));
        return new Way(node.get("changes").list(change -> ChangeJson.read(change, sequence)));
    }
}
