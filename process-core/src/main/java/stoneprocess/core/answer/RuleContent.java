package stoneprocess.core.answer;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;

/**
 * What a rule says, readable without a floor: on which facts it speaks, and what it then asks for. Immutable and safe to
 * share between threads.
 *
 * @param card the rule's card
 * @param conditions what must hold, in the order of the rule; none for a rule that speaks on every floor, or of every
 *     grit
 * @param says what it says of the first facts that meet the conditions; a contribution about a grit is about any that
 *     meets them
 * @param follows name of the fact whose classes are the values that it allows, excludes or prefers; empty when it says
 *     the same of all facts that meet the conditions
 */
public record RuleContent(Card card, List<Condition> conditions, Contribution says, Optional<String> follows) {
    public RuleContent {
        Refuse.nulls(RuleContent.class, card, conditions, says, follows);
        conditions = List.copyOf(conditions);
    }

    /**
     * One thing that must hold.
     *
     * @param facts names of the facts of which one must be so, as matched facts and unmet conditions have them;
     *     {@code Step.} and a part for what a grit is
     * @param classes the classes that will do, in their order; none when only not knowing will
     * @param others the classes that will not, in their order
     * @param orNotKnown true when it holds too as long as nobody knows
     */
    public record Condition(List<String> facts, List<Term> classes, List<Term> others, boolean orNotKnown) {
        public Condition {
            Refuse.nulls(Condition.class, facts, classes, others);
            facts = List.copyOf(facts);
            classes = List.copyOf(classes);
            others = List.copyOf(others);
        }
    }
}
