package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.math.BigDecimal;
import java.util.List;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What an audit found, in plain words: first what is open, then what was explained. */
public final class AuditText {
    private final RuleWords cards;

    /**
     * @param cards the cards of the audited rules, whose titles are told beside their ids
     */
    public AuditText(List<Card> cards) {
        this.cards = new RuleWords(cards);
    }

    /** The report as a document; {@link stoneprocess.rules.text.document.Texts#unwrapped} keeps its lines whole. */
    public Document document(AuditReport report) {
        List<AuditFinding> open = report.open();
        List<AuditFinding> explained = report.findings().stream()
                .filter(finding -> finding.explained().isPresent())
                .toList();
        int rules = report.topics().stream().mapToInt(AuditReport.Space::rules).sum();
        Draft draft = Draft.untitled(Parameters.standard())
                .paragraph(phrase("audit.looked-at")
                        .with("rules", rules)
                        .with("topics", report.topics().size())
                        .with("combinations", new Wording.Number(new BigDecimal(report.combinations()), true)))
                .section(
                        open.isEmpty()
                                ? phrase("audit.nothing-open")
                                : phrase("audit.open").with("count", open.size()));
        open.forEach(finding -> tell(draft, finding));
        if (!explained.isEmpty()) {
            draft.section(phrase("audit.explained").with("count", explained.size()));
            explained.forEach(finding -> tell(draft, finding));
        }
        return draft.document();
    }

    private void tell(Draft draft, AuditFinding finding) {
        draft.section(
                switch (finding.kind()) {
                    case UNUSED_PARAMETER -> phrase("audit.of-numbers").with("kind", finding.kind());
                    case UNREAD_FIELD -> phrase("audit.of-form").with("kind", finding.kind());
                    default ->
                        phrase("audit.of-topic")
                                .with("topic", finding.topicId())
                                .with("kind", finding.kind());
                });
        finding.rules().forEach(rule -> draft.labelled("audit.rule", title(rule)));
        if (!finding.values().isEmpty()) {
            draft.labelled("audit.about", names(Joint.COMMA, finding.values()));
        }
        if (!finding.details().isEmpty()) {
            draft.labelled("audit.shown-by", names(Joint.SEMICOLON, finding.details()));
        }
        if (!finding.facts().isEmpty()) {
            draft.labelled("audit.facts", Wording.list(Joint.SEMICOLON, finding.facts(), AuditText::fact));
        }
        if (finding.survey().isPresent()) {
            draft.labelled("audit.survey", phrase("audit.survey-in-json"));
        }
        finding.explained().ifPresent(reason -> draft.labelled("audit.may-stay", Wording.name(reason)));
    }

    private Wording title(String rule) {
        return cards.card(rule)
                .<Wording>map(card -> phrase("audit.title").with("id", rule).with("title", Wording.title(card)))
                .orElse(Wording.name(rule));
    }

    /** Facts, topics and values stand here as their keys, as chapters and JSON have them. */
    private static Wording names(Joint joint, List<String> keys) {
        return Wording.list(joint, keys, Wording::name);
    }

    private static Wording fact(MatchedFact fact) {
        return fact.known()
                ? phrase("audit.fact").with("name", fact.name()).with("classes", names(Joint.OR, fact.mayBe()))
                : phrase("audit.fact-not-known").with("name", fact.name());
    }
}
