package stoneprocess.rules.internal.meaning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.decide.Formula;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.run.Program;

/**
 * What each topic of a recommendation can depend on: the topics before it and the fields of a survey that its rules, and
 * theirs, can read. Immutable to its users and safe to share between threads.
 */
public final class RuleReach {
    private static final Set<Stage> CUTTING =
            Set.of(Stage.FIRST_CUT, Stage.SEQUENCE, Stage.EQUIPMENT, Stage.WATER_AND_PASSES, Stage.FINISHING);

    private final RuleMeanings meanings;
    private final FlatRules flat;
    private final Map<Topic<?>, Set<Topic<?>>> topics = new HashMap<>();
    private final Map<Topic<?>, Set<String>> fields = new HashMap<>();
    private final Map<Topic<?>, FlatRules> flatByTopic = new ConcurrentHashMap<>();

    RuleReach(RuleMeanings meanings) {
        this.meanings = meanings;
        this.flat = FlatRules.of(meanings.rules());
        for (Topic<?> topic : decided()) {
            Set<Topic<?>> before = new LinkedHashSet<>();
            collect(topic, before);
            topics.put(topic, before);
            fields.put(topic, union(before.stream().flatMap(this::directFields)));
        }
    }

    /** The topics that a recommendation decides. */
    public static List<Topic<?>> decided() {
        List<Topic<?>> all = new ArrayList<>();
        Program.RECOMMEND.stages().forEach(stage -> all.addAll(Topics.of(stage)));
        return all;
    }

    /** All rules. */
    public FlatRules all() {
        return flat;
    }

    /** The rules of a topic and of those that it rests on. */
    public FlatRules upTo(Topic<?> topic) {
        return flatByTopic.computeIfAbsent(topic, key -> flat.onTopics(topics.get(key)::contains));
    }

    /** Some rules, and those of the topics that their conditions rest on. */
    public FlatRules before(List<RuleMeaning> some) {
        Set<Topic<?>> resting = new HashSet<>();
        concluded(some).forEach(topic -> resting.addAll(topics.get(topic)));
        Set<String> ids = some.stream().map(RuleMeaning::id).collect(Collectors.toSet());
        return flat.only(rule -> resting.contains(rule.card().topic()) || ids.contains(rule.id()));
    }

    /** The last stage that decides what the conditions of some rules read; empty where they read the survey alone. */
    public Optional<Stage> lastBefore(List<RuleMeaning> some) {
        return concluded(some).map(Topic::stage).max(Comparator.comparing(Program.RECOMMEND.stages()::indexOf));
    }

    private static Stream<Topic<?>> concluded(List<RuleMeaning> some) {
        return some.stream().flatMap(RuleMeaning::types).flatMap(RuleReach::concludedFrom);
    }

    /** Every field that can make a difference to a topic. */
    public Set<String> fields(Topic<?> topic) {
        return fields.get(topic);
    }

    /** Every field that can make a difference to a matched fact. */
    public Set<String> fields(MatchedFact fact) {
        return fields(Facts.type(fact));
    }

    /** Every field that can make a difference to a type of fact. */
    public Set<String> fields(Class<?> type) {
        return union(Stream.concat(
                Facts.reads(type).stream(), concludedFrom(type).flatMap(topic -> fields(topic).stream())));
    }

    /** Every field that can make a difference to whether a topic is asked at all. */
    public Set<String> fieldsOfAsking(Topic<?> topic) {
        return union(asking(topic).stream().flatMap(before -> fields(before).stream()));
    }

    private static <T> Set<T> union(Stream<T> parts) {
        return parts.collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void collect(Topic<?> topic, Set<Topic<?>> into) {
        if (into.add(topic)) {
            meanings.of(topic).stream()
                    .flatMap(RuleMeaning::types)
                    .flatMap(RuleReach::concludedFrom)
                    .forEach(before -> collect(before, into));
            Formula.of(topic).ifPresent(formula -> formula.topics().forEach(before -> collect(before, into)));
            asking(topic).forEach(before -> collect(before, into));
        }
    }

    private Stream<String> directFields(Topic<?> topic) {
        return Stream.concat(
                meanings.of(topic).stream().flatMap(RuleMeaning::fields),
                Formula.of(topic).stream()
                        .flatMap(formula -> Stream.concat(
                                formula.fields().stream().map(SurveyField::name),
                                formula.damages().stream().map(Facts::damage))));
    }

    private static Stream<Topic<?>> concludedFrom(Class<?> type) {
        Stream<Topic<?>> concluded = Facts.topics(type).stream();
        return type == Step.class ? Stream.concat(concluded, Stream.of(Topics.METAL_METHOD)) : concluded;
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
