package stoneprocess.rules.internal.explain;

import java.util.concurrent.ConcurrentHashMap;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.meaning.StepPart;

/**
 * A fact as the rules see it. Equal facts are one object, and steps that no rule can tell apart too, so that what was
 * found out about one is looked up again without comparing facts.
 */
final class Seen {
    private final Object fact;

    private Seen(Object fact) {
        this.fact = fact;
    }

    Object fact() {
        return fact;
    }

    /** Every fact that came up. Safe to share between threads. */
    static final class All {
        private final ConcurrentHashMap<Object, Seen> byFact = new ConcurrentHashMap<>();

        Seen of(Object fact) {
            // Subjects of steps are only names.
            Object key = fact instanceof Step step ? StepPart.allOf(step) : fact;
            return byFact.computeIfAbsent(key, absent -> new Seen(fact));
        }
    }
}
