package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.internal.meaning.Saying;

/** Explains what a set of rules recommends. Immutable and safe to share between threads. */
public final class Explainer {
    private final Map<Topic<?>, Map<Term, List<Asker>>> askers = new HashMap<>();
    private final Numbered<Card> cards;
    private final Seen.All seen = new Seen.All();

    /** An explainer of what rules recommend. */
    public Explainer(RuleMeanings rules) {
        for (Topic<?> topic : RuleReach.decided()) {
            Map<Term, List<Asker>> byValue = askers.computeIfAbsent(topic, key -> new HashMap<>());
            for (RuleMeaning rule : rules.of(topic)) {
                for (Saying saying : rule.sayings()) {
                    Asker asker = Asker.of(saying);
                    asker.values()
                            .forEach(value -> byValue.computeIfAbsent(value, key -> new ArrayList<>())
                                    .add(asker));
                }
            }
        }
        Map<String, Card> byId = new LinkedHashMap<>();
        rules.all().forEach(rule -> byId.put(rule.id(), rule.card()));
        this.cards = new Numbered<>(byId);
    }

    /** Answers about one recommendation, which must be one of these rules. */
    public Explanation explain(Recommendation recommendation) {
        return new DefaultExplanation(recommendation, this);
    }

    /** What rules can say that names a value of a topic, to ask for it or to exclude it. */
    List<Asker> naming(Topic<?> topic, Term value) {
        return askers.getOrDefault(topic, Map.of()).getOrDefault(value, List.of());
    }

    /** The cards of the rules, ordered by id. */
    Numbered<Card> cards() {
        return cards;
    }

    /** Every fact that came up so far. */
    Seen.All seen() {
        return seen;
    }
}
