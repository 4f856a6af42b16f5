package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;

/**
 * The space of a topic with the ways in which its rules fire in it. Finer than {@link TopicSpace}: facts of one class
 * are alike in which rules fire, in what these say, and, where the outcome depends on it, in whether they are known.
 */
final class WaySpace {
    /** One fact with its classes; the first of each stands for its class. */
    record Dimension(String name, Class<?> type, List<List<Object>> classes) {}

    private static final Subject ANY_STEP = new Subject.OfStep(TrackKind.OPEN_FIELD, "any");

    private final Topic<?> topic;
    private final List<LoadedRule> rules;
    private final List<Dimension> dimensions = new ArrayList<>();
    private final List<Way> ways = new ArrayList<>();
    private final FlatRules flat = FlatRules.of(List.of());

    WaySpace(Topic<?> topic, Collection<LoadedRule> all) {
        this.topic = topic;
        this.rules = all.stream()
                .filter(rule -> rule.card().topic().equals(topic.id()))
                .toList();
        makeDimensions();
        rules.forEach(this::makeWays);
    }

    Topic<?> topic() {
        return topic;
    }

    List<LoadedRule> rules() {
        return rules;
    }

    List<Dimension> dimensions() {
        return dimensions;
    }

    List<Way> ways() {
        return ways;
    }

    List<Way> ways(String rule) {
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
            case STEP -> List.of(ANY_STEP);
            case TRACK -> List.of(Subject.OPEN_FIELD, Subject.EDGE, Subject.LOCAL_REPAIR);
        };
    }

    /** The facts of a combination, one class for each dimension. */
    List<Object> facts(int[] classes) {
        List<Object> facts = new ArrayList<>();
        for (int i = 0; i < classes.length; i++) {
            facts.add(dimensions.get(i).classes().get(classes[i]).get(0));
        }
        return List.copyOf(facts);
    }

    private void makeDimensions() {
        Map<Class<?>, List<FactPattern>> byType = new LinkedHashMap<>();
        Set<Class<?>> copied = new HashSet<>();
        for (LoadedRule rule : rules) {
            for (FactPattern condition : rule.conditions()) {
                byType.computeIfAbsent(condition.type(), type -> new ArrayList<>())
                        .add(condition);
            }
            copied.addAll(copied(rule));
        }
        byType.forEach((type, conditions) -> {
            Map<String, List<Object>> byName = new LinkedHashMap<>();
            for (Object fact : Facts.space(type)) {
                byName.computeIfAbsent(name(fact), name -> new ArrayList<>()).add(fact);
            }
            boolean knownMatters = topic.whenUncertain().isPresent() || isOfStone(type);
            byName.forEach((name, facts) -> dimensions.add(
                    new Dimension(name, type, merged(facts, conditions, knownMatters, copied.contains(type)))));
        });
    }

    private static boolean isOfStone(Class<?> type) {
        return Facts.topics(type).contains(Topics.STONE);
    }

    private static String name(Object fact) {
        String type = fact.getClass().getSimpleName();
        return fact instanceof OneOfMany<?> one ? type + ":" + one.which().key() : type;
    }

    private static List<List<Object>> merged(
            List<Object> facts, List<FactPattern> conditions, boolean knownMatters, boolean copied) {
        Map<List<Object>, List<Object>> classes = new LinkedHashMap<>();
        for (Object fact : facts) {
            List<Object> told = new ArrayList<>();
            conditions.forEach(condition -> told.add(condition.matches(fact)));
            if (knownMatters) {
                told.add(Facts.matched(fact).known());
            }
            if (copied) {
                told.add(fact);
            }
            classes.computeIfAbsent(told, key -> new ArrayList<>()).add(fact);
        }
        return List.copyOf(classes.values());
    }

    /** Types of the facts of which the rule says something else for each. */
    private Set<Class<?>> copied(LoadedRule rule) {
        List<List<Object>> accepted = rule.conditions().stream()
                .map(condition -> Facts.space(condition.type()).stream()
                        .filter(condition::matches)
                        .toList())
                .toList();
        Set<Class<?>> copied = new LinkedHashSet<>();
        if (accepted.stream().anyMatch(List::isEmpty)) {
            return copied;
        }
        List<Object> first = accepted.stream().map(facts -> facts.get(0)).toList();
        for (int i = 0; i < accepted.size(); i++) {
            Set<Contribution> said = new HashSet<>();
            for (Object fact : accepted.get(i)) {
                List<Object> matched = new ArrayList<>(first);
                matched.set(i, fact);
                said.add(says(rule, matched));
            }
            if (said.size() > 1) {
                copied.add(rule.conditions().get(i).type());
            }
        }
        return copied;
    }

    private Contribution says(LoadedRule rule, List<Object> matched) {
        Contribution said = flat.contribution(rule, matched);
        return said.subject() instanceof Subject.OfStep
                ? new Contribution(said.kind(), said.topic(), ANY_STEP, said.values())
                : said;
    }

    private void makeWays(LoadedRule rule) {
        Set<Class<?>> copied = copied(rule);
        assign(rule, copied, 0, new int[rule.conditions().size()]);
    }

    /** Of facts of which there are many, a condition may be met by any. */
    private void assign(LoadedRule rule, Set<Class<?>> copied, int index, int[] places) {
        if (index < places.length) {
            for (int i = 0; i < dimensions.size(); i++) {
                if (dimensions.get(i).type() == rule.conditions().get(index).type()
                        && !accepted(rule.conditions().get(index), i).isEmpty()) {
                    places[index] = i;
                    assign(rule, copied, index + 1, places);
                }
            }
            return;
        }
        SortedMap<Integer, BitSet> accepts = new TreeMap<>();
        for (int i = 0; i < places.length; i++) {
            BitSet classes = accepted(rule.conditions().get(i), places[i]);
            accepts.merge(places[i], classes, (one, other) -> {
                BitSet both = (BitSet) one.clone();
                both.and(other);
                return both;
            });
        }
        if (accepts.values().stream().noneMatch(BitSet::isEmpty)) {
            List<Integer> single = accepts.keySet().stream()
                    .filter(place -> copied.contains(dimensions.get(place).type()))
                    .toList();
            separate(rule, places.clone(), accepts, single);
        }
    }

    private void separate(LoadedRule rule, int[] places, SortedMap<Integer, BitSet> accepts, List<Integer> single) {
        if (!single.isEmpty()) {
            int place = single.get(0);
            accepts.get(place).stream().forEach(one -> {
                SortedMap<Integer, BitSet> narrowed = new TreeMap<>(accepts);
                narrowed.put(place, BitSet.valueOf(new long[0]));
                narrowed.get(place).set(one);
                separate(rule, places, narrowed, single.subList(1, single.size()));
            });
            return;
        }
        List<Object> matched = Arrays.stream(places)
                .mapToObj(place -> dimensions
                        .get(place)
                        .classes()
                        .get(accepts.get(place).nextSetBit(0))
                        .get(0))
                .toList();
        Contribution says = says(rule, matched);
        if (topic.whenUncertain().isPresent()) {
            byCertainty(rule, accepts, says, accepts.keySet());
        } else if (says.kind() == ContributionKind.VETO) {
            byCertainty(
                    rule,
                    accepts,
                    says,
                    accepts.keySet().stream()
                            .filter(place -> isOfStone(dimensions.get(place).type()))
                            .collect(Collectors.toCollection(LinkedHashSet::new)));
        } else {
            ways.add(new Way(rule, accepts, says, true));
        }
    }

    /** Splits a way into that with all the facts known and, one by one, those with the first that is not. */
    private void byCertainty(
            LoadedRule rule, SortedMap<Integer, BitSet> accepts, Contribution says, Collection<Integer> asked) {
        SortedMap<Integer, BitSet> rest = new TreeMap<>(accepts);
        for (int place : asked) {
            BitSet known = new BitSet();
            BitSet unknown = new BitSet();
            accepts.get(place).stream()
                    .forEach(one -> (Facts.matched(dimensions
                                                    .get(place)
                                                    .classes()
                                                    .get(one)
                                                    .get(0))
                                            .known()
                                    ? known
                                    : unknown)
                            .set(one));
            if (!unknown.isEmpty()) {
                SortedMap<Integer, BitSet> open = new TreeMap<>(rest);
                open.put(place, unknown);
                ways.add(new Way(rule, open, says, false));
            }
            if (known.isEmpty()) {
                return;
            }
            rest.put(place, known);
        }
        ways.add(new Way(rule, rest, says, true));
    }

    private BitSet accepted(FactPattern condition, int place) {
        BitSet classes = new BitSet();
        List<List<Object>> all = dimensions.get(place).classes();
        for (int i = 0; i < all.size(); i++) {
            if (condition.matches(all.get(i).get(0))) {
                classes.set(i);
            }
        }
        return classes;
    }
}
