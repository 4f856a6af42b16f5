package stoneprocess.core.json;

import java.util.List;
import java.util.Map;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.source.Card;

/** Answers why not as JSON: lossless, versioned, the same bytes on every machine. */
public final class WhyNotJson {
    private static final String WHAT = "why not";

    private WhyNotJson() {}

    /**
     * Prints an answer.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(WhyNot whyNot) {
        return Jackson.with(() -> Tree.print(tree(whyNot)));
    }

    /**
     * Reads an answer back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static WhyNot read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static Map<String, Object> tree(WhyNot whyNot) {
        return new Fields()
                .put("format", WhyNot.FORMAT)
                .put("value", whyNot.value())
                .put("kind", whyNot.kind().key())
                .put("outcome", RecommendationJson.tree(whyNot.outcome()))
                .put("by", Fields.list(whyNot.by(), RecommendationJson::tree))
                .put("asked", Fields.list(whyNot.asked(), RecommendationJson::tree))
                .put("silent", Fields.list(whyNot.silent(), AnswerJson::tree))
                .put("rests-on", Fields.list(whyNot.restsOn(), AnswerJson::tree))
                .put("cards", Fields.list(whyNot.cards(), AnswerJson::tree))
                .put("answers", Fields.list(whyNot.answers(), AnswerJson::tree))
                .tree();
    }

    private static WhyNot read(Node root) {
        root.form(WHAT, WhyNot.FORMAT)
                .only(List.of(
                        "format", "value", "kind", "outcome", "by", "asked", "silent", "rests-on", "cards", "answers"));
        String value = root.get("value").text();
        WhyNotKind kind = root.get("kind").term(WhyNotKind.class);
        Outcome outcome = RecommendationJson.outcome(root.get("outcome"));
        List<Reason> by = root.get("by").list(RecommendationJson::reason);
        List<Reason> asked = root.get("asked").list(RecommendationJson::reason);
        List<SilentRule> silent = root.get("silent").list(AnswerJson::silentRule);
        List<Matter> restsOn = root.get("rests-on").list(AnswerJson::matter);
        List<Card> cards = root.get("cards").list(AnswerJson::card);
        List<FieldAnswer> answers = root.get("answers").list(AnswerJson::fieldAnswer);
        return root.checkedParts(() -> new WhyNot(value, kind, outcome, by, asked, silent, restsOn, cards, answers));
    }
}
