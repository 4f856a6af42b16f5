package stoneprocess.core.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Why;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Card;

/** Answers why as JSON: lossless, versioned, the same bytes on every machine. */
public final class WhyJson {
    private static final String WHAT = "why";

    private WhyJson() {}

    /**
     * Prints an answer.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(Why why) {
        return Jackson.with(() -> Tree.print(tree(why)));
    }

    /**
     * Reads an answer back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static Why read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static Map<String, Object> tree(Why why) {
        Fields numbers = new Fields();
        why.numbers().forEach((name, number) -> numbers.put(name, Fields.quantity(number)));
        return new Fields()
                .put("format", Why.FORMAT)
                .put("grounds", Fields.list(why.grounds(), AnswerJson::tree))
                .put("cards", Fields.list(why.cards(), AnswerJson::tree))
                .put("answers", Fields.list(why.answers(), AnswerJson::tree))
                .put("numbers", numbers.tree())
                .tree();
    }

    private static Why read(Node root) {
        root.form(WHAT, Why.FORMAT).only(List.of("format", "grounds", "cards", "answers", "numbers"));
        List<Ground> grounds = root.get("grounds").list(AnswerJson::ground);
        List<Card> cards = root.get("cards").list(AnswerJson::card);
        List<FieldAnswer> answers = root.get("answers").list(AnswerJson::fieldAnswer);
        Node listed = root.get("numbers");
        Map<String, Quantity> numbers = new LinkedHashMap<>();
        listed.object().keySet().forEach(name -> numbers.put(name, AnswerJson.quantity(listed.get(name))));
        return root.checkedParts(() -> new Why(grounds, cards, answers, numbers));
    }
}
