package stoneprocess.rules.internal.engine;

import java.util.List;
import org.drools.model.Rule;
import stoneprocess.core.topic.Card;

/**
 * A shipped rule as data: its card and its conditions, readable without firing it.
 *
 * @param card the rule's card
 * @param conditions its conditions, one for each fact that it matches
 * @param rule the engine's own form
 */
public record LoadedRule(Card card, List<FactPattern> conditions, Rule rule) {
    public String id() {
        return card.id();
    }
}
