package stoneprocess.rules.explain;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.source.Card;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;

/** Explains what a set of rules recommends. Immutable and safe to share between threads. */
public final class Explainer {
    private final Askers askers;
    private final Numbered<Card> cards;
    private final Seen.All seen = new Seen.All();

    private Explainer(List<LoadedRule> rules, Engine engine) {
        this.askers = new Askers(rules, engine);
        Map<String, Card> sorted = new TreeMap<>();
        rules.forEach(rule -> sorted.put(rule.id(), rule.card()));
        this.cards = new Numbered<>(sorted);
    }

    /**
     * An explainer of rules. Every rule is fired a few times to learn what it says, which takes about as long as building
     * the engine.
     *
     * @param rules the rules
     * @param engine an engine of these rules
     */
    public static Explainer of(List<LoadedRule> rules, Engine engine) {
        return new Explainer(rules, engine);
    }

    /** Answers about one recommendation, which must be one of these rules. */
    public Explanation explain(Recommendation recommendation) {
        return new Explanation(recommendation, askers, cards, seen);
    }
}
