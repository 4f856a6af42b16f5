package stoneprocess.rules.internal.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.Block2;
import stoneprocess.core.decision.Contribution;
import stoneprocess.core.decision.Topic;
import stoneprocess.core.source.Card;
import stoneprocess.core.source.Sources;

/** Rules that no chapter has, for tests that spoil a rulebase. */
public final class HandMadeRule {
    private HandMadeRule() {}

    /** A rule with one condition on one fact. */
    public static <T> LoadedRule of(
            String id, Topic<?> topic, Class<T> type, Predicate<T> condition, Function<T, Contribution> says) {
        Card card = new Card(
                id,
                "Rule " + id,
                "It spoils the rulebase",
                Sources.standard().get("practice"),
                "0.1",
                false,
                List.of(),
                Optional.empty(),
                topic.stage().key(),
                topic.id());
        Variable<T> fact = DSL.declarationOf(type, "fact");
        Block2<Drools, T> consequence = (drools, matched) -> drools.insert(says.apply(matched));
        Rule rule = PatternDSL.rule("stoneprocess.rules.chapter.handmade", card.title())
                .attribute(Rule.Attribute.AGENDA_GROUP, card.chapter())
                .build(
                        PatternDSL.pattern(fact).expr("condition of " + id, condition::test),
                        DSL.on(fact).execute(consequence));
        return new LoadedRule(card, FactPattern.of(id, rule.getView().getSubConditions()), rule);
    }
}
