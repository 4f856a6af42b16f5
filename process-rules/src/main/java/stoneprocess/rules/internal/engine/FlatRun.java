package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.topic.Stage;

/** One run without an engine. Not safe to share between threads. */
final class FlatRun implements StageRun {
    private final FlatRules rules;

    /** By the number of a condition, the facts that meet it. */
    private final List<@Nullable List<Object>> meeting;

    FlatRun(FlatRules rules) {
        this.rules = rules;
        this.meeting = new ArrayList<>(Collections.nCopies(rules.size(), null));
    }

    @Override
    public void insert(Object fact) {
        for (int condition : rules.met(fact)) {
            List<Object> facts = meeting.get(condition);
            if (facts == null) {
                facts = new ArrayList<>(1);
                meeting.set(condition, facts);
            }
            facts.add(fact);
        }
    }

    @Override
    public List<Firing> fire(Stage stage) {
        List<Firing> firings = new ArrayList<>();
        for (FlatRules.Numbered numbered : rules.of(stage)) {
            fire(numbered, firings);
        }
        return firings;
    }

    private void fire(FlatRules.Numbered numbered, List<Firing> firings) {
        List<List<Object>> facts = new ArrayList<>(numbered.conditions().length);
        for (int condition : numbered.conditions()) {
            List<Object> met = meeting.get(condition);
            if (met == null) {
                return;
            }
            facts.add(met);
        }
        numbered.rule().fire(facts, firings);
    }

    @Override
    public void close() {
        meeting.clear();
    }
}
