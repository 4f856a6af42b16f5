package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.Firing;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Program;

/**
 * What the rules of a rulebase can say. A consequence is no data, so each rule is fired once on facts that meet its
 * conditions, and once more for each condition on every fact that meets it, since a few rules copy from a fact.
 * Immutable and safe to share between threads.
 */
final class Askers {
    private final Map<Topic<?>, Map<String, List<Asker>>> byTopicAndValue = new HashMap<>();

    Askers(List<LoadedRule> rules, Engine engine) {
        for (LoadedRule rule : rules) {
            Topic<?> topic = Topics.named(rule.card().topic());
            if (Program.RECOMMEND.stages().contains(topic.stage())) {
                askers(rule, topic.stage(), engine).forEach(asker -> add(topic, asker));
            }
        }
    }

    private void add(Topic<?> topic, Asker asker) {
        Map<String, List<Asker>> byValue = byTopicAndValue.computeIfAbsent(topic, key -> new HashMap<>());
        asker.contribution()
                .values()
                .forEach(value -> byValue.computeIfAbsent(value.key(), key -> new ArrayList<>())
                        .add(asker));
    }

    /** The rules that can name a value of a topic, to ask for it or to exclude it. */
    List<Asker> naming(Topic<?> topic, String value) {
        return byTopicAndValue.getOrDefault(topic, Map.of()).getOrDefault(value, List.of());
    }

    private static List<Asker> askers(LoadedRule rule, Stage stage, Engine engine) {
        List<List<Object>> accepted =
                rule.conditions().stream().map(Askers::accepted).toList();
        if (accepted.stream().anyMatch(List::isEmpty)) {
            return List.of();
        }
        List<Asker> askers = new ArrayList<>();
        for (int i = 0; i < accepted.size(); i++) {
            if (rule.conditions().get(i).type() == Step.class) {
                continue;
            }
            Map<Contribution, List<Object>> said = said(rule, stage, engine, accepted, i);
            if (said.size() > 1) {
                int varied = i;
                said.forEach((contribution, facts) ->
                        askers.add(new Asker(rule.id(), contribution, conditions(rule, accepted, varied, facts))));
                return askers;
            }
        }
        List<Object> first = accepted.stream().map(facts -> facts.get(0)).toList();
        said(rule, stage, engine, first)
                .forEach(firing -> askers.add(
                        new Asker(rule.id(), firing.contribution(), conditions(rule, accepted, -1, List.of()))));
        return askers;
    }

    private static List<Object> accepted(FactPattern pattern) {
        return Facts.space(pattern.type()).stream().filter(pattern::matches).toList();
    }

    private static List<AskCondition> conditions(
            LoadedRule rule, List<List<Object>> accepted, int varied, List<Object> facts) {
        List<AskCondition> conditions = new ArrayList<>();
        for (int i = 0; i < accepted.size(); i++) {
            conditions.add(
                    new AskCondition(rule.conditions().get(i), i == varied ? facts : accepted.get(i), i != varied));
        }
        return conditions;
    }

    /** What the rule says of each fact that meets one condition, while one fact meets each of the others. */
    private static Map<Contribution, List<Object>> said(
            LoadedRule rule, Stage stage, Engine engine, List<List<Object>> accepted, int varied) {
        List<Object> facts = new ArrayList<>(accepted.get(varied));
        for (int i = 0; i < accepted.size(); i++) {
            if (i != varied) {
                facts.add(accepted.get(i).get(0));
            }
        }
        Map<Contribution, List<Object>> said = new LinkedHashMap<>();
        for (Firing firing : said(rule, stage, engine, facts)) {
            said.computeIfAbsent(firing.contribution(), key -> new ArrayList<>())
                    .addAll(firing.facts().stream()
                            .filter(accepted.get(varied)::contains)
                            .toList());
        }
        return said;
    }

    private static List<Firing> said(LoadedRule rule, Stage stage, Engine engine, List<Object> facts) {
        try (EngineRun run = engine.start()) {
            facts.forEach(run::insert);
            return run.fire(stage).stream()
                    .filter(firing -> firing.card().id().equals(rule.id()))
                    .toList();
        }
    }
}
