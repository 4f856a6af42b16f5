package stoneprocess.rules.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Findings of the shipped rulebase that may stay, each with its reason; the table {@code audit-explained.tsv}. */
public final class Explained {
    /**
     * A line of the table.
     *
     * @param kind the kind of finding
     * @param topic the topic; empty for a parameter or a field
     * @param about ids of the rules, or keys of the values where there are no rules
     * @param reason why it may stay
     */
    public record Line(FindingKind kind, Optional<Topic<?>> topic, String about, String reason) {
        public Line {
            Refuse.nulls(Line.class, kind, topic, about, reason);
        }

        boolean fits(AuditFinding finding) {
            List<String> names = finding.rules().isEmpty() ? finding.values() : finding.rules();
            return finding.kind() == kind && finding.topic().equals(topic) && about.equals(String.join(" ", names));
        }
    }

    private final List<Line> lines;

    private Explained(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** The shipped table. */
    public static Explained shipped() {
        try (InputStream in = Explained.class.getResourceAsStream("audit-explained.tsv")) {
            if (in == null) {
                throw new RulebaseException("audit-explained.tsv is missing from the class path");
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new RulebaseException("audit-explained.tsv cannot be read", e);
        }
    }

    static Explained parse(String text) {
        List<Line> lines = new ArrayList<>();
        text.lines().skip(1).filter(line -> !line.isBlank()).forEach(line -> {
            String[] cells = line.split("\t", -1);
            if (cells.length != 4 || cells[3].isBlank()) {
                throw new RulebaseException("A line of audit-explained.tsv has not four cells: " + line);
            }
            lines.add(new Line(
                    Term.parse(FindingKind.class, cells[0], "audit-explained.kind"),
                    cells[1].isEmpty() ? Optional.empty() : Optional.of(Topics.named(cells[1])),
                    cells[2],
                    cells[3]));
        });
        return new Explained(lines);
    }

    /** The finding with its reason, if the table has one. */
    public AuditFinding explain(AuditFinding finding) {
        return lines.stream()
                .filter(line -> line.fits(finding))
                .findFirst()
                .map(line -> finding.explainedBy(line.reason()))
                .orElse(finding);
    }

    /** Lines that speak of an audited topic and explain nothing of the report; they should go. */
    public List<Line> idle(AuditReport report) {
        return lines.stream()
                .filter(line -> report.topics().stream()
                        .anyMatch(space ->
                                line.topic().filter(space.topic()::equals).isPresent()))
                .filter(line -> report.findings().stream().noneMatch(line::fits))
                .toList();
    }
}
