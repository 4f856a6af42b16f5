package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.SiteCheck;
import stoneprocess.core.topic.TrackKind;

/** Answers to job logs as JSON: lossless, versioned, the same bytes on every machine. */
public final class NextMoveJson {
    private static final String WHAT = "next move";

    private NextMoveJson() {}

    /**
     * Prints an answer. Grades are printed as keys of the sequence of the plan ahead.
     *
     * @throws InvalidInputException when that sequence lacks one of them, so that it could not be read back
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(NextMove next) {
        return Jackson.with(() -> Tree.print(tree(next)));
    }

    /**
     * Reads an answer back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static NextMove read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    static Map<String, Object> tree(NextMove next) {
        requireOwnGrade(next);
        return new Fields()
                .put("format", NextMove.FORMAT)
                .put("move", next.move().key())
                .putIf("at", next.at().map(NextMoveJson::tree))
                .put("findings", Term.keys(next.findings()))
                .put("causes", Fields.list(next.causes(), NextMoveJson::tree))
                .put("checks", Term.keys(next.checks()))
                .put("mends", Term.keys(next.mends()))
                .put("asks", Term.keys(next.asks()))
                .putIf("more-passes", next.morePasses().map(Fields::passes))
                .put("progress", Fields.list(next.progress(), ProgressJson::tree))
                .put("notes", Fields.list(next.notes(), NextMoveJson::tree))
                .put("unknown", next.unknown())
                .put("outcomes", Fields.list(next.outcomes(), RecommendationJson::tree))
                .put("ahead", RecommendationJson.tree(next.ahead()))
                .tree();
    }

    private static void requireOwnGrade(NextMove next) {
        next.at()
                .map(HoldPoint::grade)
                .filter(grade -> !next.ahead().sequence().grades().contains(grade))
                .ifPresent(grade -> {
                    throw new InvalidInputException(
                            "ahead.sequence",
                            "without " + grade.key() + " as worked last",
                            "a sequence with the grade worked last, of the same grain");
                });
    }

    static NextMove read(Node root) {
        root.form(WHAT, NextMove.FORMAT)
                .only(List.of(
                        "format",
                        "move",
                        "at",
                        "findings",
                        "causes",
                        "checks",
                        "mends",
                        "asks",
                        "more-passes",
                        "progress",
                        "notes",
                        "unknown",
                        "outcomes",
                        "ahead"));
        Recommendation ahead = RecommendationJson.read(root.get("ahead"));
        return new NextMove(
                root.get("move").term(Move.class),
                root.optional("at").map(at -> holdPoint(at, ahead.sequence())),
                terms(root.get("findings"), Finding.class),
                root.get("causes").list(NextMoveJson::cause),
                terms(root.get("checks"), SiteCheck.class),
                terms(root.get("mends"), Mend.class),
                terms(root.get("asks"), Ask.class),
                root.optional("more-passes").map(PlanJson::passes),
                root.get("progress").list(ProgressJson::read),
                root.get("notes").list(NextMoveJson::note),
                root.get("unknown").texts(),
                root.get("outcomes").list(RecommendationJson::outcome),
                ahead);
    }

    private static <E extends Enum<E> & Term> List<E> terms(Node node, Class<E> type) {
        return new ArrayList<>(node.terms(type));
    }

    private static Object tree(HoldPoint point) {
        return new Fields()
                .put("track", point.track().key())
                .put("grade", point.grade().key())
                .put("passes", point.passes())
                .tree();
    }

    private static HoldPoint holdPoint(Node node, GritSequence sequence) {
        node.only(List.of("track", "grade", "passes"));
        Node grade = node.get("grade");
        return new HoldPoint(
                node.get("track").term(TrackKind.class),
                sequence.get(grade.text(), grade.path()),
                node.get("passes").integer(1));
    }

    private static Object tree(Cause cause) {
        return new Fields()
                .put("fault", cause.fault().key())
                .put("standing", cause.standing().key())
                .put("speaks-for", Fields.list(cause.speaksFor(), RecommendationJson::tree))
                .put("speaks-against", Fields.list(cause.speaksAgainst(), RecommendationJson::tree))
                .tree();
    }

    private static Cause cause(Node node) {
        node.only(List.of("fault", "standing", "speaks-for", "speaks-against"));
        return new Cause(
                node.get("fault").term(Fault.class),
                node.get("standing").term(Standing.class),
                node.get("speaks-for").list(RecommendationJson::reason),
                node.get("speaks-against").list(RecommendationJson::reason));
    }

    private static Object tree(LogNote note) {
        return new Fields()
                .put("entry", note.entry())
                .put("kind", note.kind().key())
                .put("effect", note.effect().key())
                .tree();
    }

    private static LogNote note(Node node) {
        node.only(List.of("entry", "kind", "effect"));
        return new LogNote(
                node.get("entry").integer(0),
                node.get("kind").term(NoteKind.class),
                node.get("effect").term(Effect.class));
    }
}
