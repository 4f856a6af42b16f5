package stoneprocess.rules.internal.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Stated;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Firing;

/** Collects what the rules of a stage said: duplicates dropped, in an order that does not depend on the engine's. */
final class Ledger {
    private static final Comparator<Stated> ORDER = Comparator.comparing(
                    (Stated each) -> each.reason().rule())
            .thenComparing(each -> each.contribution().subject().key())
            .thenComparing(each -> each.contribution().kind())
            .thenComparing(each -> String.join(" ", each.reason().keys()))
            .thenComparing(each -> each.reason().facts().toString());

    private final Map<Topic<?>, List<Stated>> byTopic = new HashMap<>();

    Ledger(List<Firing> firings) {
        Map<Object, MatchedFact> matched = new IdentityHashMap<>();
        List<Stated> sorted = new ArrayList<>();
        for (Firing firing : firings) {
            sorted.add(stated(firing, matched));
        }
        sorted.sort(ORDER);
        Stated last = null;
        for (Stated each : sorted) {
            // What is equal stands side by side.
            if (!each.equals(last)) {
                byTopic.computeIfAbsent(each.contribution().topic(), topic -> new ArrayList<>())
                        .add(each);
            }
            last = each;
        }
    }

    /** Everything stated about a topic. */
    List<Stated> about(Topic<?> topic) {
        return byTopic.getOrDefault(topic, List.of());
    }

    /** A fact that several rules matched is described once. */
    private static Stated stated(Firing firing, Map<Object, MatchedFact> matched) {
        List<MatchedFact> facts = new ArrayList<>(firing.facts().size());
        for (Object fact : firing.facts()) {
            facts.add(matched.computeIfAbsent(fact, Facts::matched));
        }
        Reason reason = new Reason(
                firing.contribution().kind(),
                firing.card().id(),
                firing.contribution().values(),
                facts);
        return new Stated(firing.contribution(), reason);
    }
}
