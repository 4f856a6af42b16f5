package stoneprocess.rules.internal.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Block1;
import org.drools.model.functions.Block2;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Rules that no chapter has, for tests that spoil a rulebase. */
public final class HandMadeRule {
    private HandMadeRule() {}

    /** A rule with one condition on one fact. */
    public static <T> LoadedRule of(
            String id, Topic<?> topic, Class<T> type, Predicate<T> condition, Function<T, Contribution> says) {
        Variable<T> fact = DSL.declarationOf(type, "fact");
        Block2<Drools, T> consequence = (drools, matched) -> drools.insert(says.apply(matched));
        return of(
                id,
                topic,
                PatternDSL.pattern(fact).expr("condition of " + id, condition::test),
                DSL.on(fact).execute(consequence));
    }

    /** A rule with a condition on each of two facts. */
    public static <T, U> LoadedRule of(
            String id,
            Topic<?> topic,
            Class<T> type,
            Predicate<T> condition,
            Class<U> otherType,
            Predicate<U> otherCondition,
            Supplier<Contribution> says) {
        Block1<Drools> consequence = drools -> drools.insert(says.get());
        return of(
                id,
                topic,
                PatternDSL.pattern(DSL.declarationOf(type, "fact")).expr("condition of " + id, condition::test),
                PatternDSL.pattern(DSL.declarationOf(otherType, "other"))
                        .expr("other condition of " + id, otherCondition::test),
                DSL.execute(consequence));
    }

    private static LoadedRule of(String id, Topic<?> topic, RuleItemBuilder<?>... parts) {
        Card card = new Card(
                id,
                "Rule " + id,
                "It spoils the rulebase",
                Sources.standard().get("practice"),
                "0.1",
                false,
                List.of(),
                topic == Topics.VERDICT ? Optional.of(Protection.FABRIC) : Optional.empty(),
                Optional.empty(),
                topic.stage().key(),
                topic);
        Rule rule = PatternDSL.rule("stoneprocess.rules.chapter.handmade", card.title())
                .attribute(Rule.Attribute.AGENDA_GROUP, card.chapter())
                .build(parts);
        return new LoadedRule(card, FactPattern.of(id, rule.getView().getSubConditions()), rule);
    }
}
