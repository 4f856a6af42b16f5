package stoneprocess.rules.internal.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Said;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Firing;

/** Collects what the rules of a stage said: duplicates dropped, in an order that does not depend on the engine's. */
final class Ledger {
    private static final Comparator<Said> ORDER = Comparator.comparing(
                    (Said said) -> said.reason().rule())
            .thenComparing(said -> said.contribution().subject().key())
            .thenComparing(said -> said.contribution().kind())
            .thenComparing(said -> String.join(" ", said.reason().values()))
            .thenComparing(said -> said.reason().facts().toString());

    private final Map<Topic<?>, List<Said>> byTopic;

    Ledger(List<Firing> firings) {
        Map<Object, MatchedFact> matched = new IdentityHashMap<>();
        List<Said> sorted = new ArrayList<>(new LinkedHashSet<>(
                firings.stream().map(firing -> said(firing, matched)).toList()));
        sorted.sort(ORDER);
        byTopic = sorted.stream()
                .collect(Collectors.groupingBy(said -> said.contribution().topic()));
    }

    /** Everything said about a topic. */
    List<Said> about(Topic<?> topic) {
        return byTopic.getOrDefault(topic, List.of());
    }

    /** A fact that several rules matched is described once. */
    private static Said said(Firing firing, Map<Object, MatchedFact> matched) {
        List<MatchedFact> facts = firing.facts().stream()
                .map(fact -> matched.computeIfAbsent(fact, Facts::matched))
                .toList();
        Reason reason = new Reason(
                firing.contribution().kind(),
                firing.card().id(),
                Term.keys(firing.contribution().values()),
                facts);
        return new Said(firing.contribution(), reason);
    }
}
