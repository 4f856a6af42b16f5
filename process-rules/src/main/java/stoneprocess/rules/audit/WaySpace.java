package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.meaning.ConditionMeaning;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.Saying;

/**
 * Every situation that the rules of one topic can tell apart, with the ways in which they fire in it. Facts of one class
 * are alike in which rules fire, in what these say, and, where the outcome depends on it, in whether they are known.
 */
final class WaySpace {
    /** One fact with its classes; the first of each stands for its class. */
    record Dimension(String name, Class<?> type, List<List<Object>> classes) {
        Object first(int index) {
            return classes.get(index).get(0);
        }
    }

    private final Topic<?> topic;
    private final List<RuleMeaning> rules;
    private final List<Dimension> dimensions = new ArrayList<>();
    private final List<FiringWay> ways = new ArrayList<>();

    WaySpace(Topic<?> topic, RuleMeanings all) {
        this.topic = topic;
        this.rules = all.of(topic);
        makeDimensions();
        for (RuleMeaning rule : rules) {
            rule.sayings().forEach(saying -> makeWays(rule, saying, 0, new TreeMap<>()));
        }
    }

    Topic<?> topic() {
        return topic;
    }

    List<RuleMeaning> rules() {
        return rules;
    }

    List<Dimension> dimensions() {
        return dimensions;
    }

    List<FiringWay> ways() {
        return ways;
    }

    List<FiringWay> ways(String rule) {
        return ways.stream().filter(way -> way.id().equals(rule)).toList();
    }

    BigInteger size() {
        return dimensions.stream()
                .map(dimension -> BigInteger.valueOf(dimension.classes().size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /** What the topic is decided for; one step stands for all. */
    List<Subject> subjects() {
        return switch (topic.scope()) {
            case FLOOR -> List.of(Subject.FLOOR);
            case STEP -> List.of(Saying.ANY_STEP);
            case TRACK -> List.of(Subject.OPEN_FIELD, Subject.EDGE, Subject.LOCAL_REPAIR);
        };
    }

    /** The facts of a combination, one class for each dimension. */
    List<Object> facts(int[] classes) {
        List<Object> facts = new ArrayList<>();
        for (int i = 0; i < classes.length; i++) {
            facts.add(dimensions.get(i).first(classes[i]));
        }
        return List.copyOf(facts);
    }

    private void makeDimensions() {
        Map<Class<?>, List<ConditionMeaning>> byType = new LinkedHashMap<>();
        rules.stream()
                .flatMap(rule -> rule.sayings().stream())
                .flatMap(saying -> saying.conditions().stream())
                .forEach(condition -> byType.computeIfAbsent(condition.type(), type -> new ArrayList<>())
                        .add(condition));
        byType.forEach((type, conditions) -> {
            boolean knownMatters = topic.whenUncertain().isPresent() || isOfStone(type);
            Map<String, Map<List<Boolean>, List<Object>>> alike = new LinkedHashMap<>();
            for (Object fact : Facts.space(type)) {
                List<Boolean> told = new ArrayList<>();
                conditions.forEach(condition -> told.add(condition.holds(fact)));
                told.add(knownMatters && Facts.matched(fact).known());
                alike.computeIfAbsent(Facts.name(fact), name -> new LinkedHashMap<>())
                        .computeIfAbsent(told, key -> new ArrayList<>())
                        .add(fact);
            }
            alike.forEach((name, classes) -> dimensions.add(new Dimension(name, type, List.copyOf(classes.values()))));
        });
    }

    private static boolean isOfStone(Class<?> type) {
        return Facts.topics(type).contains(Topics.STONE);
    }

    /** A condition on a repeated fact holds when any one of them meets it, so that each of them gives a way. */
    private void makeWays(RuleMeaning rule, Saying saying, int index, SortedMap<Integer, BitSet> accepts) {
        if (index == saying.conditions().size()) {
            byCertainty(rule, accepts, saying.saysOfAnyStep());
            return;
        }
        ConditionMeaning condition = saying.conditions().get(index);
        for (int place = 0; place < dimensions.size(); place++) {
            if (dimensions.get(place).type() == condition.type()) {
                BitSet classes = accepted(condition, dimensions.get(place));
                if (accepts.containsKey(place)) {
                    classes.and(accepts.get(place));
                }
                if (!classes.isEmpty()) {
                    SortedMap<Integer, BitSet> narrowed = new TreeMap<>(accepts);
                    narrowed.put(place, classes);
                    makeWays(rule, saying, index + 1, narrowed);
                }
            }
        }
    }

    private static BitSet accepted(ConditionMeaning condition, Dimension dimension) {
        BitSet classes = new BitSet();
        for (int i = 0; i < dimension.classes().size(); i++) {
            classes.set(i, condition.holds(dimension.first(i)));
        }
        return classes;
    }

    private void byCertainty(RuleMeaning rule, SortedMap<Integer, BitSet> accepts, Contribution says) {
        if (topic.whenUncertain().isPresent()) {
            byCertainty(rule, accepts, says, accepts.keySet());
        } else if (says.kind() == ContributionKind.VETO) {
            byCertainty(
                    rule,
                    accepts,
                    says,
                    accepts.keySet().stream()
                            .filter(place -> isOfStone(dimensions.get(place).type()))
                            .toList());
        } else {
            ways.add(new FiringWay(rule, accepts, says, true));
        }
    }

    /** Splits a way into that with all the facts known and, one by one, those with the first that is not. */
    private void byCertainty(
            RuleMeaning rule, SortedMap<Integer, BitSet> accepts, Contribution says, Collection<Integer> asked) {
        SortedMap<Integer, BitSet> rest = new TreeMap<>(accepts);
        for (int place : asked) {
            BitSet known = new BitSet();
            BitSet unknown = new BitSet();
            accepts.get(place).stream().forEach(index -> {
                boolean isKnown =
                        Facts.matched(dimensions.get(place).first(index)).known();
                (isKnown ? known : unknown).set(index);
            });
            if (!unknown.isEmpty()) {
                SortedMap<Integer, BitSet> open = new TreeMap<>(rest);
                open.put(place, unknown);
                ways.add(new FiringWay(rule, open, says, false));
            }
            if (known.isEmpty()) {
                return;
            }
            rest.put(place, known);
        }
        ways.add(new FiringWay(rule, rest, says, true));
    }
}
