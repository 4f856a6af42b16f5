package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;

/**
 * The rules read without an engine: each is the conjunction of its flat conditions and one contribution. Says the same
 * as {@link Engine}, only faster where a question asks thousands of surveys that differ in little. Recommendations never
 * come from here. Immutable and safe to share between threads.
 */
public final class FlatRules {
    private final Map<Stage, List<FlatRule>> byStage = new EnumMap<>(Stage.class);

    private final Set<Class<?>> types = new HashSet<>();

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
        rule.loaded().conditions().forEach(condition -> types.add(condition.type()));
    }

    /** A new run. */
    public StageRun start() {
        return new FlatRun(this);
    }

    /** True when any of the rules reads facts of a type; the others need not be made. */
    public boolean reads(Class<?> type) {
        return types.contains(type);
    }

    List<FlatRule> of(Stage stage) {
        return byStage.getOrDefault(stage, List.of());
    }
}
