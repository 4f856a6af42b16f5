package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.LoadedRule;

/**
 * Every situation that the rules of one topic can tell apart. The facts that they read are merged where no condition
 * tells them apart, and the merged classes are combined in every way. Combinations are made when they are asked for, so
 * that a space may be far larger than memory. Immutable and safe to share between threads.
 *
 * <p>For a topic that is decided for each step, a combination holds one step. Merged facts fire the same rules; a rule
 * whose consequence copies from the fact, such as the families of a name, still says something else for each.
 */
public final class TopicSpace {
    /**
     * One fact that the topic's rules read, with the classes that they tell apart.
     *
     * @param name the fact's name in the rules, with the constant where there is one fact for each
     * @param type its type
     * @param classes facts that fire the same rules, class by class; the first of each stands for its class
     */
    public record Dimension(String name, Class<?> type, List<List<Object>> classes) {
        public Dimension {
            Refuse.nulls(Dimension.class, name, type, classes);
            classes = classes.stream().map(List::copyOf).toList();
        }
    }

    private final Topic<?> topic;
    private final List<LoadedRule> rules;
    private final List<Dimension> dimensions;
    private final BigInteger size;

    private TopicSpace(Topic<?> topic, List<LoadedRule> rules) {
        this.topic = topic;
        this.rules = rules;
        this.dimensions = dimensions(rules);
        this.size = dimensions.stream()
                .map(dimension -> BigInteger.valueOf(dimension.classes().size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /** The space of a topic under the given rules; those that speak to other topics are left out. */
    public static TopicSpace of(Topic<?> topic, Collection<LoadedRule> rules) {
        return new TopicSpace(
                Objects.requireNonNull(topic, "topic"),
                rules.stream().filter(rule -> rule.card().topic() == topic).toList());
    }

    public Topic<?> topic() {
        return topic;
    }

    /** The rules that speak to the topic. */
    public List<LoadedRule> rules() {
        return rules;
    }

    public List<Dimension> dimensions() {
        return dimensions;
    }

    /** How many combinations there are; one when no rule speaks to the topic. */
    public BigInteger size() {
        return size;
    }

    /**
     * The combination at an index: one fact for each dimension, the last dimension changing fastest.
     *
     * @throws InvalidInputException when the index is negative or not under {@link #size()}
     */
    public List<Object> combination(BigInteger index) {
        if (index.signum() < 0 || index.compareTo(size) >= 0) {
            throw new InvalidInputException(topic.id() + ".index", index.toString(), "0 to under " + size);
        }
        Object[] facts = new Object[dimensions.size()];
        BigInteger rest = index;
        for (int i = facts.length - 1; i >= 0; i--) {
            List<List<Object>> classes = dimensions.get(i).classes();
            BigInteger[] parts = rest.divideAndRemainder(BigInteger.valueOf(classes.size()));
            facts[i] = classes.get(parts[1].intValue()).get(0);
            rest = parts[0];
        }
        return List.of(facts);
    }

    /** All combinations in the order of their index. */
    public Stream<List<Object>> combinations() {
        return Stream.iterate(BigInteger.ZERO, index -> index.compareTo(size) < 0, index -> index.add(BigInteger.ONE))
                .map(this::combination);
    }

    /** Combinations drawn evenly, with repetition; in each, facts are drawn from all that their classes merge. */
    public Stream<List<Object>> sample(SplittableRandom random) {
        return Stream.generate(() -> {
            List<Object> facts = new ArrayList<>();
            for (Dimension dimension : dimensions) {
                List<Object> members = dimension
                        .classes()
                        .get(random.nextInt(dimension.classes().size()));
                facts.add(members.get(random.nextInt(members.size())));
            }
            return List.copyOf(facts);
        });
    }

    /** Ids of the rules that fire on the facts, by their conditions alone. */
    public List<String> firing(List<Object> facts) {
        return rules.stream()
                .filter(rule -> rule.conditions().stream()
                        .allMatch(condition -> facts.stream().anyMatch(condition::matches)))
                .map(LoadedRule::id)
                .sorted()
                .toList();
    }

    /** Ids of the rules of this topic that an engine fires on the facts. */
    public List<String> firing(List<Object> facts, Engine engine) {
        try (EngineRun run = engine.start()) {
            facts.forEach(run::insert);
            TreeSet<String> ids = new TreeSet<>();
            run.fire(topic.stage()).stream()
                    .map(firing -> firing.card())
                    .filter(card -> card.topic() == topic)
                    .forEach(card -> ids.add(card.id()));
            return List.copyOf(ids);
        }
    }

    private static List<Dimension> dimensions(List<LoadedRule> rules) {
        Map<Class<?>, List<FactPattern>> byType = new LinkedHashMap<>();
        for (LoadedRule rule : rules) {
            for (FactPattern condition : rule.conditions()) {
                byType.computeIfAbsent(condition.type(), type -> new ArrayList<>())
                        .add(condition);
            }
        }
        List<Dimension> dimensions = new ArrayList<>();
        byType.forEach((type, conditions) -> {
            Map<String, List<Object>> byName = new LinkedHashMap<>();
            for (Object fact : Facts.space(type)) {
                byName.computeIfAbsent(Facts.name(fact), name -> new ArrayList<>())
                        .add(fact);
            }
            byName.forEach((name, facts) -> dimensions.add(new Dimension(name, type, merged(facts, conditions))));
        });
        return List.copyOf(dimensions);
    }

    private static List<List<Object>> merged(List<Object> facts, List<FactPattern> conditions) {
        Map<List<Boolean>, List<Object>> classes = new LinkedHashMap<>();
        for (Object fact : facts) {
            List<Boolean> met = conditions.stream()
                    .map(condition -> condition.matches(fact))
                    .toList();
            classes.computeIfAbsent(met, key -> new ArrayList<>()).add(fact);
        }
        return List.copyOf(classes.values());
    }
}
