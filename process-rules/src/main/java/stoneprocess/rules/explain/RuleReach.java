package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Program;

/**
 * What each topic of a recommendation can depend on: the topics before it and the fields of a survey that its rules, and
 * theirs, can read. Made once for a set of rules. Immutable to its users and safe to share between threads.
 */
public final class RuleReach {
    private static final Set<Stage> CUTTING =
            Set.of(Stage.FIRST_CUT, Stage.SEQUENCE, Stage.EQUIPMENT, Stage.WATER_AND_PASSES, Stage.FINISHING);

    private final FlatRules flat;
    private final Map<String, List<LoadedRule>> rules = new HashMap<>();
    private final Map<String, Set<String>> topics = new HashMap<>();
    private final Map<String, Set<String>> fields = new HashMap<>();
    private final Map<String, FlatRules> flatByTopic = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> asked = new ConcurrentHashMap<>();

    /** The reach of the topics under the given rules. */
    public RuleReach(List<LoadedRule> loaded) {
        flat = FlatRules.of(loaded);
        for (LoadedRule rule : loaded) {
            rules.computeIfAbsent(rule.card().topic(), topic -> new ArrayList<>())
                    .add(rule);
        }
        for (Topic<?> topic : decided()) {
            Set<String> before = new LinkedHashSet<>();
            collect(topic, before);
            topics.put(topic.id(), Collections.unmodifiableSet(before));
        }
        for (Topic<?> topic : decided()) {
            Set<String> read = new LinkedHashSet<>();
            topics.get(topic.id()).forEach(id -> read.addAll(directFields(Topics.named(id))));
            fields.put(topic.id(), Collections.unmodifiableSet(read));
        }
    }

    /** The topics that a recommendation decides. */
    static List<Topic<?>> decided() {
        List<Topic<?>> all = new ArrayList<>();
        Program.RECOMMEND.stages().forEach(stage -> all.addAll(Topics.of(stage)));
        return all;
    }

    /** All rules. */
    FlatRules all() {
        return flat;
    }

    /** The rules of a topic and of those that it rests on. */
    FlatRules upTo(Topic<?> topic) {
        return flatByTopic.computeIfAbsent(topic.id(), id -> flat.onTopics(topics.get(id)::contains));
    }

    /** The rules that speak to a topic. */
    List<LoadedRule> rules(Topic<?> topic) {
        return rules.getOrDefault(topic.id(), List.of());
    }

    /** Every field that can make a difference to a topic. */
    Set<String> fields(String topic) {
        return fields.get(topic);
    }

    /** Every field that can make a difference to a matched fact. */
    Set<String> fields(MatchedFact fact) {
        Set<String> all = new LinkedHashSet<>(Facts.reads(fact));
        fact.topics().forEach(topic -> all.addAll(fields(topic)));
        if (fact.name().equals(Step.class.getSimpleName())) {
            all.addAll(fields(Topics.METAL_METHOD.id()));
        }
        return all;
    }

    /** Every field that can make a difference to a type of fact. */
    Set<String> fields(Class<?> type) {
        Set<String> all = new LinkedHashSet<>(Facts.reads(type));
        topics(type).forEach(topic -> all.addAll(fields(topic)));
        return all;
    }

    /** Every field that can make a difference to whether a topic is asked at all. */
    Set<String> fieldsOfAsking(Topic<?> topic) {
        Set<String> all = new LinkedHashSet<>();
        asking(topic).forEach(before -> all.addAll(fields(before.id())));
        return all;
    }

    /** Keys of all values that a rule can speak of. */
    Set<String> spokenOf(LoadedRule rule) {
        return asked.computeIfAbsent(rule.id(), id -> spoken(rule));
    }

    /** Values come from the rule itself or from one of its facts, so that the facts are varied one at a time. */
    private Set<String> spoken(LoadedRule rule) {
        List<List<Object>> facts = rule.conditions().stream()
                .map(condition -> Facts.space(condition.type()).stream()
                        .filter(condition::matches)
                        .toList())
                .toList();
        if (facts.stream().anyMatch(List::isEmpty)) {
            return Set.of();
        }
        Set<String> values = new HashSet<>();
        for (int varied = 0; varied < facts.size(); varied++) {
            for (Object fact : facts.get(varied)) {
                List<Object> matched = new ArrayList<>();
                for (int i = 0; i < facts.size(); i++) {
                    matched.add(i == varied ? fact : facts.get(i).get(0));
                }
                values.addAll(Term.keys(flat.contribution(rule, matched).values()));
            }
        }
        return Set.copyOf(values);
    }

    private void collect(Topic<?> topic, Set<String> into) {
        if (into.add(topic.id())) {
            for (LoadedRule rule : rules(topic)) {
                for (FactPattern condition : rule.conditions()) {
                    topics(condition.type()).forEach(before -> collect(Topics.named(before), into));
                }
            }
            inputs(topic).forEach(before -> collect(before, into));
            asking(topic).forEach(before -> collect(before, into));
        }
    }

    private Set<String> directFields(Topic<?> topic) {
        Set<String> read = new LinkedHashSet<>();
        for (LoadedRule rule : rules(topic)) {
            rule.conditions().forEach(condition -> read.addAll(Facts.reads(condition.type())));
        }
        if (topic == Topics.GRIT_PATH) {
            read.add(SurveyField.GRADES.name());
        } else if (topic == Topics.PASSES) {
            read.add(SurveyField.SCRIBER.name());
        } else if (topic == Topics.LITRES) {
            read.add(SurveyField.AREA.name());
        }
        return read;
    }

    private static Stream<String> topics(Class<?> type) {
        Stream<String> concluded = Facts.topics(type).stream().map(Topic::id);
        return type == Step.class ? Stream.concat(concluded, Stream.of(Topics.METAL_METHOD.id())) : concluded;
    }

    /** What a computed topic is computed from. */
    private static List<Topic<?>> inputs(Topic<?> topic) {
        if (topic == Topics.GRIT_PATH) {
            return List.of(Topics.FIRST_CUT, Topics.LAST_GRIT, Topics.BONDS, Topics.STEP_RULE, Topics.TRANSITION);
        }
        if (topic == Topics.TEST_CUTS) {
            return List.of(Topics.GRIT_PATH);
        }
        if (topic == Topics.PASSES) {
            return List.of(Topics.MACHINE, Topics.ADDED_WEIGHT, Topics.STONE);
        }
        return topic == Topics.LITRES ? List.of(Topics.WATER_LEVEL) : List.of();
    }

    /** What decides whether a topic is asked: the verdict and whatever ends the planning before it, and the steps. */
    private static List<Topic<?>> asking(Topic<?> topic) {
        List<Topic<?>> before = new ArrayList<>();
        if (CUTTING.contains(topic.stage())) {
            before.add(Topics.VERDICT);
            List<Stage> stages = Program.RECOMMEND.stages();
            decided().stream()
                    .filter(Topic::isBlocking)
                    .filter(blocking -> stages.indexOf(blocking.stage()) < stages.indexOf(topic.stage()))
                    .forEach(before::add);
        }
        if (topic.scope() == Scope.STEP || topic == Topics.TEST_CUTS) {
            before.add(Topics.GRIT_PATH);
        }
        if (topic == Topics.GRIT_PATH) {
            before.add(Topics.FIRST_CUT);
        }
        return before;
    }
}
