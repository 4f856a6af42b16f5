package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.Arrays;
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
    /** A rule with the numbers of its conditions. */
    record Numbered(FlatRule rule, int[] conditions) {}

    private final Map<Stage, List<Numbered>> byStage = new EnumMap<>(Stage.class);

    /** The conditions of all rules; the place of each is its number. */
    private final List<FactPattern> conditions = new ArrayList<>();

    private final Map<Class<?>, List<Integer>> conditionsByType = new HashMap<>();

    /** Types from whose facts a rule copies what it says. */
    private final Set<Class<?>> copied = new HashSet<>();

    // Facts are made of classes, so that there are only so many.
    private final Map<Object, int[]> met = new ConcurrentHashMap<>();
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
        return only(rule -> topics.test(rule.card().topic()));
    }

    /** Those rules alone that pass. */
    public FlatRules only(Predicate<LoadedRule> which) {
        FlatRules some = new FlatRules();
        byStage.forEach((stage, rules) -> rules.stream()
                .map(Numbered::rule)
                .filter(rule -> which.test(rule.loaded()))
                .forEach(rule -> some.add(stage, rule)));
        return some;
    }

    private void add(Stage stage, FlatRule rule) {
        List<FactPattern> own = rule.loaded().conditions();
        int[] numbers = new int[own.size()];
        for (int i = 0; i < numbers.length; i++) {
            Class<?> type = own.get(i).type();
            numbers[i] = conditions.size();
            conditions.add(own.get(i));
            conditionsByType.computeIfAbsent(type, key -> new ArrayList<>()).add(numbers[i]);
            if (!rule.alwaysSaysTheSame()) {
                copied.add(type);
            }
        }
        byStage.computeIfAbsent(stage, key -> new ArrayList<>()).add(new Numbered(rule, numbers));
    }

    /** A new run. */
    public StageRun start() {
        return new FlatRun(this);
    }

    /** True when any of the rules reads facts of a type; the others need not be made. */
    public boolean reads(Class<?> type) {
        return conditionsByType.containsKey(type);
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
        return List.of(
                Arrays.stream(met(fact)).boxed().toList(), Facts.matched(fact).known());
    }

    /** How many conditions the rules have together. */
    int size() {
        return conditions.size();
    }

    /** The numbers of the conditions that a fact meets. */
    int[] met(Object fact) {
        return met.computeIfAbsent(fact, this::findMet);
    }

    private int[] findMet(Object fact) {
        return conditionsByType.getOrDefault(fact.getClass(), List.of()).stream()
                .filter(number -> conditions.get(number).matches(fact))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    List<Numbered> of(Stage stage) {
        return byStage.getOrDefault(stage, List.of());
    }
}
