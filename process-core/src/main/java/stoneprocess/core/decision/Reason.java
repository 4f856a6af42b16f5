package stoneprocess.core.decision;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;

/**
 * One contribution as it is kept in a decision record: which rule, what it said, on which facts.
 *
 * @param kind need, wish or veto
 * @param rule id of the rule
 * @param values the values that it allowed or excluded in the order of the topic's domain, or preferred, the best first
 * @param facts the facts that it matched, in the order of the rule's conditions
 */
public record Reason(ContributionKind kind, String rule, List<? extends Term> values, List<MatchedFact> facts) {
    public Reason {
        Refuse.nulls(Reason.class, kind, rule, values, facts);
        values = List.copyOf(values);
        facts = List.copyOf(facts);
    }

    /** The values' stable keys, as JSON names them. */
    public List<String> keys() {
        return Term.keys(values);
    }

    /** True when every fact it rests on is known. */
    public boolean certain() {
        for (MatchedFact fact : facts) {
            if (!fact.known()) {
                return false;
            }
        }
        return true;
    }

    /** True when what it takes from the survey is the answer to this field and nothing else. */
    public boolean restsOnlyOn(SurveyField<?> field) {
        List<MatchedFact> surveyed =
                facts.stream().filter(fact -> !fact.fields().isEmpty()).toList();
        return !surveyed.isEmpty()
                && surveyed.stream().allMatch(fact -> fact.fields().equals(List.of(field.name())));
    }
}
