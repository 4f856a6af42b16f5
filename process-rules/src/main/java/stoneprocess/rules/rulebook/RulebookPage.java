package stoneprocess.rules.rulebook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stoneprocess.core.decision.Stage;
import stoneprocess.core.decision.Topic;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Card;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.term.Term;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.text.Phrases;

/** The rulebook as a page of Markdown, made from the rules' cards: chapter by stage, topic by topic. */
public final class RulebookPage {
    private final StringBuilder page = new StringBuilder();
    private final Rulebase rulebase;
    private final Phrases phrases;

    private RulebookPage(Rulebase rulebase) {
        this.rulebase = rulebase;
        this.phrases = new Phrases(UnitSystem.METRIC, rulebase.parameters());
    }

    /** The page of a rulebase; the same rulebase gives the same text. */
    public static String markdown(Rulebase rulebase) {
        return new RulebookPage(rulebase).write();
    }

    private String write() {
        line("# Rulebook");
        line("");
        line("Made from the rules' cards when the library is built; a test keeps it true. Each rule says one thing");
        line("about one topic; the topic's policy decides. Rules marked *locked* guard people or fabric and cannot be");
        line(
                "switched off. Where practice differs between crews and regions the rule says what others do; a house retunes");
        line("numbers and switches rules off by an overlay.");
        line("");
        grades();
        for (Stage stage : Stage.values()) {
            chapter(stage);
        }
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
        List<Topic<? extends Term>> topics = Topics.of(stage);
        if (topics.isEmpty()) {
            return;
        }
        line("## " + phrases.of(stage));
        line("");
        for (Topic<? extends Term> topic : topics) {
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
            rulebase.cards().stream()
                    .filter(card -> card.topic().equals(topic.id()))
                    .forEach(this::rule);
        }
    }

    private void rule(Card card) {
        line("- **" + card.id() + "** " + card.title() + "." + (card.locked() ? " *Locked.*" : ""));
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
        line("## numbers");
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
