package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.classify.Facts;

/**
 * The rules read without an engine: each is the conjunction of its flat conditions and one contribution. Says the same
 * as {@link Engine}, only faster where a question asks thousands of surveys that differ in little. Recommendations never
 * come from here. Immutable and safe to share between threads.
 */
public final class FlatRules {
    private final Map<Stage, List<FlatRule>> byStage = new EnumMap<>(Stage.class);

    private final Map<Class<?>, List<FactPattern>> conditions = new HashMap<>();

    /** Types from whose facts a rule copies what it says. */
    private final Set<Class<?>> copied = new HashSet<>();

    private final Map<Object, Object> seen = new ConcurrentHashMap<>();

    private FlatRules() {}

    /** The given rules, each with its consequence as it was compiled. */
    public static FlatRules of(List<LoadedRule> rules) {
        return ofFlat(rules.stream().map(FlatRule::of).toList());
    }

    /** Rules whose consequences may have been changed. */
    static FlatRules ofFlat(List<FlatRule> rules) {
        FlatRules flat = new FlatRules();
        for (FlatRule rule : rules) {
            LoadedRule loaded = rule.loaded();
            flat.add(Term.parse(Stage.class, loaded.card().chapter(), loaded.id()), rule);
        }
        return flat;
    }

    /** Those rules alone whose topic passes. */
    public FlatRules onTopics(Predicate<Topic<?>> topics) {
        FlatRules some = new FlatRules();
        byStage.forEach((stage, rules) -> rules.stream()
                .filter(rule -> topics.test(rule.loaded().card().topic()))
                .forEach(rule -> some.add(stage, rule)));
        return some;
    }

    private void add(Stage stage, FlatRule rule) {
        byStage.computeIfAbsent(stage, key -> new ArrayList<>()).add(rule);
        for (FactPattern condition : rule.loaded().conditions()) {
            conditions
                    .computeIfAbsent(condition.type(), type -> new ArrayList<>())
                    .add(condition);
            if (!rule.alwaysSaysTheSame()) {
                copied.add(condition.type());
            }
        }
    }

    /** A new run. */
    public StageRun start() {
        return new FlatRun(this);
    }

    /** True when any of the rules reads facts of a type; the others need not be made. */
    public boolean reads(Class<?> type) {
        return conditions.containsKey(type);
    }

    /**
     * What the rules see of a fact: which of their conditions it meets, and whether it is known. Where they see the same,
     * they say the same.
     */
    public Object seen(Object fact) {
        return seen.computeIfAbsent(fact, this::see);
    }

    private Object see(Object fact) {
        if (copied.contains(fact.getClass())) {
            return fact;
        }
        List<FactPattern> asked = conditions.getOrDefault(fact.getClass(), List.of());
        BitSet met = new BitSet();
        for (int i = 0; i < asked.size(); i++) {
            met.set(i, asked.get(i).matches(fact));
        }
        return List.of(met, Facts.matched(fact).known());
    }

    List<FlatRule> of(Stage stage) {
        return byStage.getOrDefault(stage, List.of());
    }
}
