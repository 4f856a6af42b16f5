package stoneprocess.core.audit;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Topic;

/**
 * One thing that an audit found: keys and arguments, no sentences.
 *
 * @param kind what it is
 * @param topic the topic; empty for a parameter or a field
 * @param rules ids of the rules, the one at fault first where one is; none for a value, a parameter or a field
 * @param values keys of the values that it is about, or the name of the parameter or the field: a value, a number and a
 *     field share no type
 * @param facts a combination of facts that shows it; none where no combination can
 * @param details what shows it beside facts: the conditions that no fact meets, the part of the card, the shape
 * @param survey a survey whose answer shows it, confirmed by running it; empty where there is none or none was found
 * @param explained why it may stay; empty when nobody explained it
 */
public record AuditFinding(
        FindingKind kind,
        Optional<Topic<?>> topic,
        List<String> rules,
        List<String> values,
        List<MatchedFact> facts,
        List<String> details,
        Optional<FloorSurvey> survey,
        Optional<String> explained) {
    public AuditFinding {
        Refuse.nulls(AuditFinding.class, kind, topic, rules, values, facts, details, survey, explained);
        rules = List.copyOf(rules);
        values = List.copyOf(values);
        facts = List.copyOf(facts);
        details = List.copyOf(details);
    }

    /** The topic's id; empty for a parameter or a field. */
    public String topicId() {
        return topic.<String>map(Topic::id).orElse("");
    }

    /** The same with a reason why it may stay. */
    public AuditFinding explainedBy(String reason) {
        return new AuditFinding(kind, topic, rules, values, facts, details, survey, Optional.of(reason));
    }

    /** The same with a survey that shows it. */
    public AuditFinding shownBy(FloorSurvey shown) {
        return new AuditFinding(kind, topic, rules, values, facts, details, Optional.of(shown), explained);
    }
}
