package stoneprocess.core.json;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Card;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.source.SourceKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;

/** The parts that answers about recommendations share. */
final class AnswerJson {
    private AnswerJson() {}

    static Object tree(Matter matter) {
        return new Fields()
                .put("topic", matter.topic())
                .put("subject", matter.subject().key())
                .tree();
    }

    static Matter matter(Node node) {
        node.only(List.of("topic", "subject"));
        Node subject = node.get("subject");
        return new Matter(node.get("topic").text(), Subject.parse(subject.text(), subject.path()));
    }

    static Object tree(Ground ground) {
        return new Fields()
                .put("outcome", RecommendationJson.tree(ground.outcome()))
                .put("policy", ground.policy().key())
                .put("rests-on", Fields.list(ground.restsOn(), AnswerJson::tree))
                .tree();
    }

    static Ground ground(Node node) {
        node.only(List.of("outcome", "policy", "rests-on"));
        return new Ground(
                RecommendationJson.outcome(node.get("outcome")),
                node.get("policy").term(PolicyKind.class),
                node.get("rests-on").list(AnswerJson::matter));
    }

    static Object tree(Card card) {
        return new Fields()
                .put("id", card.id())
                .put("title", card.title())
                .put("because", card.because())
                .put("source", tree(card.source()))
                .put("since", card.since())
                .put("locked", card.locked())
                .put("offers", card.offers())
                .putIf("differs", card.differs())
                .put("chapter", card.chapter())
                .put("topic", card.topic())
                .tree();
    }

    static Card card(Node node) {
        node.only(List.of(
                "id", "title", "because", "source", "since", "locked", "offers", "differs", "chapter", "topic"));
        String id = node.get("id").text();
        String title = node.get("title").text();
        String because = node.get("because").text();
        Citation source = citation(node.get("source"));
        return node.checkedParts(() -> new Card(
                id,
                title,
                because,
                source,
                node.get("since").text(),
                node.get("locked").flag(),
                node.get("offers").texts(),
                node.optional("differs").map(Node::text),
                node.get("chapter").text(),
                node.get("topic").text()));
    }

    private static Object tree(Citation source) {
        return new Fields()
                .put("id", source.id())
                .put("kind", source.kind().key())
                .put("grade", source.grade().key())
                .put("title", source.title())
                .put("publisher", source.publisher())
                .put("year", source.year())
                .tree();
    }

    private static Citation citation(Node node) {
        node.only(List.of("id", "kind", "grade", "title", "publisher", "year"));
        String id = node.get("id").text();
        SourceKind kind = node.get("kind").term(SourceKind.class);
        EvidenceGrade grade = node.get("grade").term(EvidenceGrade.class);
        String title = node.get("title").text();
        String publisher = node.get("publisher").text();
        String year = node.get("year").text();
        return node.checkedParts(() -> new Citation(id, kind, grade, title, publisher, year));
    }

    static Object tree(FieldAnswer answer) {
        return new Fields()
                .put("field", answer.field())
                .put("known", answer.known())
                .put("given", Fields.list(answer.given(), AnswerJson::tree))
                .tree();
    }

    static FieldAnswer fieldAnswer(Node node) {
        node.only(List.of("field", "known", "given"));
        return new FieldAnswer(
                node.get("field").text(),
                node.get("known").flag(),
                node.get("given").list(AnswerJson::given));
    }

    private static Object tree(Given given) {
        return new Fields()
                .putIf("zone", given.zone())
                .put("keys", given.keys())
                .put("amounts", Fields.list(given.amounts(), Fields::quantity))
                .tree();
    }

    private static Given given(Node node) {
        node.only(List.of("zone", "keys", "amounts"));
        return new Given(
                node.optional("zone").map(Node::text),
                node.get("keys").texts(),
                node.get("amounts").list(AnswerJson::quantity));
    }

    /** A quantity whose dimension is told by its unit, which must be one in which a dimension is kept. */
    static Quantity quantity(Node node) {
        node.only(List.of("value", "unit"));
        Node unit = node.get("unit");
        String symbol = unit.text();
        Dimension dimension = Stream.of(Dimension.values())
                .filter(candidate -> candidate.unit().symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        unit.path(),
                        symbol,
                        "one of "
                                + String.join(
                                        ", ",
                                        Stream.of(Dimension.values())
                                                .map(known -> known.unit().symbol())
                                                .toList())));
        return node.get("value").quantity(dimension.unit());
    }

    static Object tree(SilentRule silent) {
        return new Fields()
                .put("rule", silent.rule())
                .put("unmet", Fields.list(silent.unmet(), AnswerJson::tree))
                .tree();
    }

    static SilentRule silentRule(Node node) {
        node.only(List.of("rule", "unmet"));
        String rule = node.get("rule").text();
        List<Unmet> unmet = node.get("unmet").list(AnswerJson::unmet);
        return node.checkedParts(() -> new SilentRule(rule, unmet));
    }

    private static Object tree(Unmet unmet) {
        return new Fields()
                .put("fact", unmet.fact())
                .put("actual", unmet.actual())
                .put("required", unmet.required())
                .put("steps", unmet.steps())
                .put("fields", unmet.fields())
                .put("topics", unmet.topics())
                .tree();
    }

    private static Unmet unmet(Node node) {
        node.only(List.of("fact", "actual", "required", "steps", "fields", "topics"));
        return new Unmet(
                node.get("fact").text(),
                node.get("actual").texts(),
                node.get("required").texts(),
                node.get("steps").integer(0),
                node.get("fields").texts(),
                node.get("topics").texts());
    }
}
