package stoneprocess.rules.rulebook;

import static stoneprocess.rules.text.document.Wording.name;
import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.RuleText;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Item.Align;
import stoneprocess.rules.text.document.Item.Paragraph;
import stoneprocess.rules.text.document.Item.Table;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Section;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/**
 * The rulebook as a handbook in Markdown, made from the rules themselves: chapter by stage in the order of the work, then
 * the chapters that follow and diagnose it; topic by topic, each rule in plain words.
 */
public final class RulebookPage {
    /** The chapters in the order of the work: planning first, then what is read from a job log. */
    private static final List<Stage> CHAPTERS = List.of(
            Stage.SURVEY,
            Stage.GO_NO_GO,
            Stage.FIRST_CUT,
            Stage.SEQUENCE,
            Stage.EQUIPMENT,
            Stage.WATER_AND_PASSES,
            Stage.FINISHING,
            Stage.SAFETY,
            Stage.REVIEW,
            Stage.SIGNS,
            Stage.NEXT);

    private static final String NUMBERS = "numbers";

    private final Rulebase rulebase;
    private final List<RuleContent> rules;

    private RulebookPage(Rulebase rulebase) {
        this.rulebase = rulebase;
        this.rules = rulebase.contents();
    }

    /** The whole handbook in English and metric units, in Markdown; the same rulebase gives the same text. */
    public static String markdown(Rulebase rulebase) {
        return markdown(Texts.english(), rulebase);
    }

    /** The whole handbook in Markdown, in a reader's language. */
    public static String markdown(Texts texts, Rulebase rulebase) {
        return texts.markdown(document(rulebase));
    }

    /** The whole handbook as a document, to be rendered by any page; its phrases hold emphasis in Markdown. */
    public static Document document(Rulebase rulebase) {
        RulebookPage page = new RulebookPage(rulebase);
        Draft draft = Draft.titled(phrase("rulebook.title"), rulebase.parameters())
                .paragraph("rulebook.intro")
                .add(page.grades());
        CHAPTERS.forEach(stage -> draft.add(page.chapter(stage)));
        return draft.add(page.numbers()).document();
    }

    /**
     * A part of the handbook in Markdown, in a reader's language.
     *
     * @param part key of a stage for its chapter, for example {@code first-cut}; {@code numbers}; or the id of a rule
     * @throws InvalidInputException when the rulebase has neither
     */
    public static String part(Texts texts, Rulebase rulebase, String part) {
        return texts.markdown(Draft.untitled(rulebase.parameters())
                .add(new RulebookPage(rulebase).part(part))
                .document());
    }

    private Item part(String part) {
        Optional<RuleContent> asked =
                rules.stream().filter(rule -> rule.card().id().equals(part)).findFirst();
        if (asked.isPresent()) {
            return rule(asked.get());
        }
        if (part.equals(NUMBERS)) {
            return numbers();
        }
        return CHAPTERS.stream()
                .filter(stage -> stage.key().equals(part))
                .findFirst()
                .map(this::chapter)
                .orElseThrow(() -> new InvalidInputException(
                        "rulebook",
                        part,
                        "the id of a rule, for example CUT-003, " + NUMBERS + ", or a chapter: "
                                + String.join(", ", Term.keys(CHAPTERS))));
    }

    private Item grades() {
        Map<EvidenceGrade, Integer> counts = new TreeMap<>();
        rulebase.cards().forEach(card -> counts.merge(card.grade(), 1, Integer::sum));
        List<List<Wording>> rows = new ArrayList<>();
        counts.forEach((grade, count) -> rows.add(List.of(Wording.of(grade), Wording.number(count))));
        rows.add(List.of(
                phrase("rulebook.all-rules"), Wording.number(rulebase.cards().size())));
        return new Table(
                List.of(Align.LEFT, Align.LEFT), List.of(phrase("rulebook.grade"), phrase("rulebook.rules")), rows);
    }

    private Section chapter(Stage stage) {
        List<Item> topics = new ArrayList<>();
        for (Topic<?> topic : Topics.of(stage)) {
            topics.add(topic(topic));
        }
        return new Section(Optional.of(Wording.of(stage)), topics);
    }

    private Section topic(Topic<?> topic) {
        List<Item> items = new ArrayList<>();
        Wording decided =
                phrase("rulebook.decided").with("policy", topic.policy()).with("scope", topic.scope());
        List<Wording> values =
                topic.domain().stream().map(value -> name(value.key())).toList();
        items.add(new Paragraph(
                values.isEmpty()
                        ? decided
                        : phrase(topic.isCautiousFirst() ? "rulebook.values-cautious-first" : "rulebook.values")
                                .with("decided", decided)
                                .with("values", Wording.list(Joint.COMMA, values))));
        rules.stream().filter(rule -> rule.card().topic() == topic).forEach(rule -> items.add(rule(rule)));
        return new Section(
                Optional.of(phrase("rulebook.topic")
                        .with("topic", phrase("topic." + topic.id()))
                        .with("id", topic.id())),
                items);
    }

    private static Item rule(RuleContent rule) {
        Card card = rule.card();
        List<Item> says = new ArrayList<>();
        says.add(new Paragraph(phrase("rulebook.when").with("when", RuleText.when(rule))));
        says.add(new Paragraph(phrase("rulebook.then").with("then", RuleText.then(rule))));
        says.add(new Paragraph(phrase("card.title").with("title", Wording.because(card))));
        says.add(new Paragraph(
                phrase("rulebook.source").with("source", source(card.source())).with("since", card.since())));
        card.protects()
                .ifPresent(protection ->
                        says.add(new Paragraph(phrase("rulebook.protects").with("protects", Wording.of(protection)))));
        Wording.differs(card)
                .ifPresent(others ->
                        says.add(new Paragraph(phrase("rulebook.differs").with("others", others))));
        if (!card.offers().isEmpty()) {
            List<OfferKind> offers =
                    card.offers().stream().map(OfferKind::valueOf).toList();
            says.add(new Paragraph(phrase("rulebook.offers").with("offers", Wording.sentences(offers))));
        }
        return new Item.Bullet(
                false,
                phrase(card.locked() ? "rulebook.rule-locked" : "rulebook.rule")
                        .with("id", card.id())
                        .with("title", Wording.title(card)),
                says);
    }

    private static Wording source(Citation citation) {
        Wording source = Wording.source(citation);
        return citation.practice()
                ? source
                : phrase("rulebook.graded-source").with("source", source).with("grade", citation.grade());
    }

    private Section numbers() {
        List<List<Wording>> rows = new ArrayList<>();
        for (Parameter parameter : rulebase.parameters().all()) {
            boolean retuned =
                    !Parameters.standard().parameter(parameter.name()).value().equals(parameter.value());
            Wording value = Wording.amount(parameter.value(), Precision.EXACT);
            rows.add(List.of(
                    phrase("rulebook.code").with("code", parameter.name()),
                    retuned ? phrase("rulebook.retuned").with("value", value) : value,
                    source(parameter.source())));
        }
        List<Wording> headings =
                List.of(phrase("rulebook.parameter"), phrase("rulebook.value"), phrase("rulebook.source-of-number"));
        return new Section(
                Optional.of(phrase("rulebook.numbers")),
                List.of(new Table(List.of(Align.LEFT, Align.LEFT, Align.LEFT), headings, rows)));
    }
}
