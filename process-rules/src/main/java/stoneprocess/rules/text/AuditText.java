package stoneprocess.rules.text;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.Finding;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.source.Card;

/** What an audit found, in plain words: first what is open, then what was explained. */
public final class AuditText {
    private final Map<String, String> titles = new TreeMap<>();

    /**
     * @param cards the cards of the audited rules, whose titles are told beside their ids
     */
    public AuditText(List<Card> cards) {
        cards.forEach(card -> titles.put(card.id(), card.title()));
    }

    /** The whole report. */
    public String render(AuditReport report) {
        StringBuilder text = new StringBuilder();
        List<Finding> open = report.open();
        List<Finding> explained = report.findings().stream()
                .filter(finding -> finding.explained().isPresent())
                .toList();
        int rules = report.topics().stream().mapToInt(AuditReport.Space::rules).sum();
        line(
                text,
                "%d rules on %d topics were looked at over %,d combinations of facts.",
                rules,
                report.topics().size(),
                report.combinations());
        line(text, "");
        line(text, open.isEmpty() ? "Nothing is open." : "Open: %d", open.size());
        open.forEach(finding -> tell(text, finding));
        if (!explained.isEmpty()) {
            line(text, "");
            line(text, "May stay, for the reason given: %d", explained.size());
            explained.forEach(finding -> tell(text, finding));
        }
        return text.toString();
    }

    private void tell(StringBuilder text, Finding finding) {
        line(text, "");
        String where = finding.topic().isEmpty() ? "Numbers" : "Topic " + finding.topic();
        line(text, "%s: %s", where, words(finding.kind()));
        finding.rules().forEach(rule -> line(text, "  rule     %s  %s", rule, titles.getOrDefault(rule, "")));
        if (!finding.values().isEmpty()) {
            line(text, "  about    %s", String.join(", ", finding.values()));
        }
        if (!finding.details().isEmpty()) {
            line(text, "  shown by %s", String.join("; ", finding.details()));
        }
        if (!finding.facts().isEmpty()) {
            line(
                    text,
                    "  facts    %s",
                    finding.facts().stream().map(AuditText::fact).collect(Collectors.joining("; ")));
        }
        if (finding.survey().isPresent()) {
            line(text, "  survey   one that shows it is in the JSON form of this report");
        }
        finding.explained().ifPresent(reason -> line(text, "  may stay %s", reason));
    }

    private static String fact(MatchedFact fact) {
        return fact.name() + " " + (fact.known() ? String.join(" or ", fact.mayBe()) : "not known");
    }

    private static String words(FindingKind kind) {
        return switch (kind) {
            case NEVER_FIRES -> "a rule whose conditions no fact meets together";
            case ALWAYS_OUTWEIGHED -> "a rule that changes no outcome, whatever the facts";
            case DUPLICATE -> "two rules that fire on the same facts and say the same";
            case SUBSUMED -> "a rule that fires only where the second one says the same";
            case GAP -> "exclusions that together leave no value";
            case UNDECLARED_CONFLICT -> "rules that cannot be followed together, and no card says what then";
            case UNREACHABLE_VALUE -> "a value that no facts give";
            case IMPASSE_WITHOUT_OFFER -> "it cannot be closed, and nothing is on offer but to leave the floor";
            case STALE_CARD -> "a card that says what is not so";
            case UNUSED_PARAMETER -> "a number that nothing reads";
            case FORBIDDEN_SHAPE -> "a rule that is not flat conditions and one contribution";
            case READS_OWN_STAGE -> "a rule that reads what its own or a later stage concludes";
        };
    }

    private static void line(StringBuilder text, String form, Object... arguments) {
        text.append(String.format(Locale.ROOT, form, arguments).stripTrailing()).append('\n');
    }
}
