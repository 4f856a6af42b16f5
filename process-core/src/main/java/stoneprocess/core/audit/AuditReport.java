package stoneprocess.core.audit;

import java.math.BigInteger;
import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.topic.Topic;

/**
 * What an audit found, and over how much. The same rulebase gives an equal report.
 *
 * @param rulebase which rules
 * @param topics the topics that were audited, in the order in which they close
 * @param acrossStages in how many ways the facts of all audited topics could be combined, one class of each
 * @param findings in the order of topics, then of kinds, then of rules
 */
public record AuditReport(
        RulebaseStamp rulebase, List<Space> topics, BigInteger acrossStages, List<AuditFinding> findings) {
    /** Version of the form in which it is printed as JSON. */
    public static final String FORMAT = "audit/1";

    /**
     * How much of a topic was looked at.
     *
     * @param topic the topic
     * @param rules how many rules speak to it
     * @param facts how many facts they read
     * @param combinations in how many ways these can be combined, one class of each
     * @param covered how many of these the audit went through for one subject, each counted once
     * @param states how many differing states stood for them
     */
    public record Space(Topic<?> topic, int rules, int facts, BigInteger combinations, BigInteger covered, int states) {
        public Space {
            Refuse.nulls(Space.class, topic, combinations, covered);
        }
    }

    public AuditReport {
        Refuse.nulls(AuditReport.class, rulebase, topics, acrossStages, findings);
        topics = List.copyOf(topics);
        findings = List.copyOf(findings);
    }

    /** The findings that nobody explained. */
    public List<AuditFinding> open() {
        return findings.stream()
                .filter(finding -> finding.explained().isEmpty())
                .toList();
    }

    /** Combinations of all audited topics together. */
    public BigInteger combinations() {
        return topics.stream().map(Space::combinations).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
