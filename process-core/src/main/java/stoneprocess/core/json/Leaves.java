package stoneprocess.core.json;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Input;
import stoneprocess.core.log.Moment;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/** Shapes of what is no record: texts, whole numbers, words and what is known by a key. */
final class Leaves {
    private static final String GRADE = "(" + oneOf(Bond.class) + ")-[1-9][0-9]*";

    private static final Map<String, Object> ANY_TEXT = Shape.object("type", "string");

    static final Shape TEXT = Shape.of(text -> text, Node::text, ANY_TEXT);
    static final Shape FLAG = Shape.of(flag -> flag, Node::flag, Shape.object("type", "boolean"));
    static final Shape COUNT = whole(0, Integer.MAX_VALUE);

    /** A number without a unit, printed with all its digits. */
    static final Shape NUMBER = Shape.of(
            number -> BigDecimal.valueOf((double) number),
            node -> node.number().doubleValue(),
            Shape.object("type", "number"));

    static final Shape DECIMAL = Shape.of(
            number -> plain(((BigDecimal) number).stripTrailingZeros()), Node::number, Shape.object("type", "number"));

    /** A count that may be larger than the numbers that readers of JSON keep exactly. */
    static final Shape DIGITS = keyed(BigInteger::toString, Leaves::digits, "[0-9]{1,200}");

    static final Shape SUBJECT = keyed(
            Subject::key,
            node -> Subject.parse(node.text(), node.path()),
            "(floor|zone:.+|(" + oneOf(TrackKind.class) + ")(/" + GRADE + ")?)");

    static final Shape MOMENT = keyed(
            Moment::print,
            node -> Moment.parse(node.text(), node.path()),
            "day [1-9][0-9]{0,3}, ([01][0-9]|2[0-3]):[0-5][0-9]");

    static final Shape GRADE_KEY = Shape.of(
            (grade, grades) -> grades.key((AbrasiveGrade) grade),
            node -> node.scope().sequence().get(node.text(), node.path()),
            definitions -> pattern(GRADE));

    static final Shape FIELD = Shape.of(
            field -> ((SurveyField<?>) field).name(),
            node -> node.checked(() -> SurveyField.named(node.text())),
            words(SurveyField.all().stream().map(SurveyField::name)));

    static final Shape TOPIC =
            Shape.of(topic -> ((Topic<?>) topic).id(), node -> node.checked(() -> Topics.named(node.text())), ANY_TEXT);

    /** An empty text where there is no topic. */
    static final Shape TOPIC_OR_NONE = Shape.of(
            id -> id, node -> node.text().isEmpty() ? Optional.empty() : Optional.of(TOPIC.read(node)), ANY_TEXT);

    static final Shape INPUT = Shape.of(input -> ((Input) input).name(), node -> Input.named(node.text()), ANY_TEXT);

    /** Values of the topic that the record around them names, by their keys. */
    static final Shape VALUES = Shape.of(
            keys -> keys,
            node -> ((Topic<?>) node.scope().find("topic"))
                    .parse(node.array().stream().map(Node::text).toList(), node.path()),
            Shape.object("type", "array", "items", Shape.object("type", "string")));

    static final Shape CITATION_ID = Shape.of(
            source -> ((Citation) source).id(),
            node -> node.checked(() -> Sources.standard().get(node.text())),
            ANY_TEXT);

    private Leaves() {}

    /** What is printed as a text of its own, such as a key. */
    @SuppressWarnings("unchecked")
    private static <T> Shape keyed(Function<T, String> print, Function<Node, T> read, String pattern) {
        return Shape.of(value -> print.apply((T) value), read::apply, pattern(pattern));
    }

    private static Map<String, Object> pattern(String pattern) {
        return Shape.object("type", "string", "pattern", "^" + pattern + "$");
    }

    private static String oneOf(Class<? extends Enum<?>> words) {
        return keys(words).collect(Collectors.joining("|"));
    }

    static Stream<String> keys(Class<?> words) {
        return Arrays.stream(words.getEnumConstants()).map(word -> ((Term) word).key());
    }

    static Map<String, Object> words(Stream<String> words) {
        return Shape.object("enum", words.toList());
    }

    /** A text whose length its record checks. */
    static Shape text(int longest) {
        return Shape.of(text -> text, Node::text, Shape.object("type", "string", "minLength", 1, "maxLength", longest));
    }

    /** A whole number. */
    static Shape whole(int least, int most) {
        boolean open = most == Integer.MAX_VALUE;
        Map<String, Object> schema = Shape.object("type", "integer", "minimum", least);
        if (!open) {
            schema.put("maximum", most);
        }
        String accepted = "a whole number" + (open ? " of " + least + " or more" : " from " + least + " to " + most);
        return Shape.of(
                number -> number,
                node -> {
                    int number = node.integer();
                    if (number < least || number > most) {
                        throw node.refused(accepted);
                    }
                    return number;
                },
                schema);
    }

    /** A word of an enum. */
    static Shape term(Typed type) {
        return Shape.of(
                (term, grades) -> ((Term) term).key(),
                node -> node.term(type.raw()),
                definitions -> type.refer(definitions, () -> words(keys(type.raw()))));
    }

    /** Without an exponent, as it is read back. */
    private static BigDecimal plain(BigDecimal number) {
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private static BigInteger digits(Node node) {
        String digits = node.text();
        if (!digits.matches("[0-9]{1,200}")) {
            throw node.refused("a whole number in digits");
        }
        return new BigInteger(digits);
    }

    /** The JSON schema of an object that takes no other fields but those of the user's own. */
    static Map<String, Object> objectSchema(Map<String, Object> properties, List<String> required) {
        Map<String, Object> schema = Shape.object("type", "object", "properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("patternProperties", Shape.object("^" + Extras.PREFIX, true));
        schema.put("additionalProperties", false);
        return schema;
    }
}
