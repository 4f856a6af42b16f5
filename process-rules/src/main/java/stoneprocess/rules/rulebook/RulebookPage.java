package stoneprocess.rules.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Card;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.RuleContent;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.Phrases;
import stoneprocess.rules.text.RuleText;

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

    private final StringBuilder page = new StringBuilder();
    private final Rulebase rulebase;
    private final List<RuleContent> rules;
    private final Phrases phrases;
    private final RuleText text;

    private RulebookPage(Rulebase rulebase) {
        this.rulebase = rulebase;
        this.rules = rulebase.contents();
        this.phrases = new Phrases(UnitSystem.METRIC, rulebase.parameters());
        this.text = new RuleText(phrases);
    }

    /** The whole handbook; the same rulebase gives the same text. */
    public static String markdown(Rulebase rulebase) {
        return new RulebookPage(rulebase).write();
    }

    /**
     * A part of the handbook.
     *
     * @param part key of a stage for its chapter, for example {@code first-cut}; {@code numbers}; or the id of a rule
     * @throws InvalidInputException when the rulebase has neither
     */
    public static String part(Rulebase rulebase, String part) {
        RulebookPage page = new RulebookPage(rulebase);
        Optional<RuleContent> rule = page.rules.stream()
                .filter(candidate -> candidate.card().id().equals(part))
                .findFirst();
        Optional<Stage> chapter =
                CHAPTERS.stream().filter(stage -> stage.key().equals(part)).findFirst();
        if (rule.isPresent()) {
            page.rule(rule.get());
        } else if (chapter.isPresent()) {
            page.chapter(chapter.get());
        } else if (part.equals(NUMBERS)) {
            page.numbers();
        } else {
            throw new InvalidInputException(
                    "rulebook",
                    part,
                    "the id of a rule, for example CUT-003, " + NUMBERS + ", or a chapter: "
                            + String.join(", ", Term.keys(CHAPTERS)));
        }
        return page.page.toString();
    }

    private String write() {
        line("# Rulebook");
        line("");
        line(
                "Made from the rules themselves when the library is built; a test keeps it true. Each rule says one thing");
        line(
                "about one topic; the topic's policy decides. *When* names the facts that must be so, *Then* what the rule");
        line(
                "asks for. Rules marked *locked* guard people or fabric and cannot be switched off. Where practice differs");
        line(
                "between crews and regions the rule says what others do; a house retunes numbers and switches rules off by");
        line("an overlay. Chapters 1 to 8 plan a floor, 9 to 11 follow the work and trace faults.");
        line("");
        grades();
        CHAPTERS.forEach(this::chapter);
        numbers();
        return page.toString();
    }

    private void grades() {
        Map<EvidenceGrade, Integer> counts = new TreeMap<>();
        rulebase.cards().forEach(card -> counts.merge(card.grade(), 1, Integer::sum));
        line("| grade of the source | rules |");
        line("|---|---|");
        counts.forEach((grade, count) -> line("| " + grade.key().replace('-', ' ') + " | " + count + " |"));
        line("| all | " + rulebase.cards().size() + " |");
        line("");
    }

    private void chapter(Stage stage) {
        line("## " + phrases.of(stage));
        line("");
        for (Topic<? extends Term> topic : Topics.of(stage)) {
            line("### " + phrases.get("topic." + topic.id()) + " (`" + topic.id() + "`)");
            line("");
            List<String> values = topic.domain().stream().map(Term::key).toList();
            line(phrases.of(topic.policy()) + " Decided for each "
                    + topic.scope().key() + ".");
            if (!values.isEmpty()) {
                String order = topic.isCautiousFirst() ? "Values, the most cautious first: " : "Values: ";
                line(order + String.join(", ", values) + ".");
            }
            line("");
            rules.stream()
                    .filter(rule -> rule.card().topic().equals(topic.id()))
                    .forEach(this::rule);
        }
    }

    private void rule(RuleContent rule) {
        Card card = rule.card();
        line("- **" + card.id() + "** " + card.title() + "." + (card.locked() ? " *Locked.*" : ""));
        line("  *" + phrases.get("rule.when") + "* " + text.when(rule) + ".");
        line("  *" + phrases.get("rule.then") + "* " + text.then(rule) + ".");
        line("  " + card.because() + ".");
        line("  Source: " + source(card.source()) + ". Since " + card.since() + ".");
        card.differs().ifPresent(others -> line("  Practice differs. " + others + "."));
        if (!card.offers().isEmpty()) {
            List<String> offers = card.offers().stream()
                    .map(offer -> phrases.of(OfferKind.valueOf(offer)))
                    .toList();
            line("  If it cannot be met: " + String.join(" ", offers));
        }
        line("");
    }

    private static String source(Citation citation) {
        String grade = citation.published() ? " [" + citation.grade().key().replace('-', ' ') + "]" : "";
        return citation.print() + grade;
    }

    private void numbers() {
        line("## Numbers");
        line("");
        line("| parameter | value | source |");
        line("|---|---|---|");
        for (Parameter parameter : rulebase.parameters().all()) {
            boolean retuned =
                    !Parameters.standard().parameter(parameter.name()).value().equals(parameter.value());
            line("| `" + parameter.name() + "` | " + parameter.value().print() + (retuned ? " (retuned)" : "") + " | "
                    + source(parameter.source()) + " |");
        }
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
