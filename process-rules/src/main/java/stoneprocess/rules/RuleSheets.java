package stoneprocess.rules;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/**
 * What every rule of a rulebase reads and says, by keys, as it leaves the library.
 *
 * @param rulebase which rules they are
 * @param rules the rules in the order of {@link Rulebase#contents()}
 */
public record RuleSheets(RulebaseStamp rulebase, List<Sheet> rules) {
    /** Version of the JSON form. */
    public static final String FORMAT = "rules/1";

    public RuleSheets {
        Refuse.nulls(RuleSheets.class, rulebase, rules);
        rules = List.copyOf(rules);
    }

    /** Those of a rulebase. */
    public static RuleSheets of(Rulebase rulebase) {
        return new RuleSheets(
                rulebase.stamp(), rulebase.contents().stream().map(Sheet::of).toList());
    }

    /**
     * One rule, as {@link RuleContent} has it.
     *
     * @param card its card
     * @param reads what must hold, in the order of the rule; none for a rule that speaks on every floor, or of every grit
     * @param says what it then asks for
     * @param follows name of the fact whose classes are the values that it allows, excludes or prefers; empty when it
     *     says the same of all facts that meet the conditions
     */
    public record Sheet(Card card, List<Condition> reads, Said says, Optional<String> follows) {
        public Sheet {
            Refuse.nulls(Sheet.class, card, reads, says, follows);
            reads = List.copyOf(reads);
        }

        private static Sheet of(RuleContent content) {
            return new Sheet(
                    content.card(),
                    content.conditions().stream().map(Condition::of).toList(),
                    new Said(
                            content.says().kind(),
                            content.says().topic().id(),
                            content.says().subject(),
                            Term.keys(content.says().values())),
                    content.follows());
        }
    }

    /**
     * One thing that must hold.
     *
     * @param facts names of the facts of which one must be so
     * @param classes keys of the classes that will do; none when only not knowing will
     * @param others keys of the classes that will not
     * @param orNotKnown true when it holds too as long as nobody knows
     */
    public record Condition(List<String> facts, List<String> classes, List<String> others, boolean orNotKnown) {
        public Condition {
            Refuse.nulls(Condition.class, facts, classes, others);
            facts = List.copyOf(facts);
            classes = List.copyOf(classes);
            others = List.copyOf(others);
        }

        private static Condition of(RuleContent.Condition condition) {
            return new Condition(
                    condition.facts(),
                    Term.keys(condition.classes()),
                    Term.keys(condition.others()),
                    condition.orNotKnown());
        }
    }

    /**
     * What a rule asks for.
     *
     * @param kind need, wish or veto
     * @param topic id of the topic
     * @param subject what it is about
     * @param values keys of the values that it allows, prefers (the best first) or excludes
     */
    public record Said(ContributionKind kind, String topic, Subject subject, List<String> values) {
        public Said {
            Refuse.nulls(Said.class, kind, topic, subject, values);
            values = List.copyOf(values);
        }
    }
}
