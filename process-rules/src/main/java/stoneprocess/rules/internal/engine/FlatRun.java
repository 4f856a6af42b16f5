package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.topic.Stage;

/** One run without an engine. Not safe to share between threads. */
final class FlatRun implements StageRun {
    private final FlatRules rules;
    private final Map<Class<?>, List<Object>> facts = new HashMap<>();

    FlatRun(FlatRules rules) {
        this.rules = rules;
    }

    @Override
    public void insert(Object fact) {
        facts.computeIfAbsent(fact.getClass(), type -> new ArrayList<>(1)).add(fact);
    }

    @Override
    public List<Firing> fire(Stage stage) {
        List<Firing> firings = new ArrayList<>();
        rules.of(stage).forEach(rule -> rule.fire(facts, firings));
        return firings;
    }

    @Override
    public void close() {
        facts.clear();
    }
}
