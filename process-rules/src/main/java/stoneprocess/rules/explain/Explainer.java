package stoneprocess.rules.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.source.Card;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;

/** Explains what a set of rules recommends. Immutable and safe to share between threads. */
public final class Explainer {
    private final Askers askers;
    private final Map<String, Card> cards = new HashMap<>();

    private Explainer(List<LoadedRule> rules, Engine engine) {
        this.askers = new Askers(rules, engine);
        rules.forEach(rule -> cards.put(rule.id(), rule.card()));
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
        return new Explanation(recommendation, askers, cards);
    }
}
