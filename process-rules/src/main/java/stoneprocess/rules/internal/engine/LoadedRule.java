package stoneprocess.rules.internal.engine;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drools.model.Rule;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;

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

    /** False when the survey alone tells that the rule cannot fire, since no fact of it meets one of the conditions. */
    public boolean mayFireOn(Situation situation) {
        Set<Class<?>> types = new HashSet<>();
        conditions.forEach(condition -> types.add(condition.type()));
        List<Object> surveyed = Facts.after(Optional.empty(), situation, types::contains);
        surveyed.forEach(fact -> types.remove(fact.getClass()));
        return conditions.stream()
                .allMatch(condition ->
                        types.contains(condition.type()) || surveyed.stream().anyMatch(condition::matches));
    }
}
