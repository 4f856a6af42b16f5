package stoneprocess.rules.internal.meaning;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.engine.LoadedRule;

/** What the rules of a rulebase read and say. Immutable to its users and safe to share between threads. */
public final class RuleMeanings {
    private final List<RuleMeaning> all;
    private final Map<Topic<?>, List<RuleMeaning>> byTopic;
    private volatile @Nullable RuleReach reach;

    private RuleMeanings(List<RuleMeaning> all) {
        this.all = all;
        this.byTopic = all.stream()
                .collect(Collectors.groupingBy(RuleMeaning::topic, LinkedHashMap::new, Collectors.toList()));
    }

    /** The meanings of rules; each is found out when it is first asked for. */
    public static RuleMeanings of(List<LoadedRule> rules) {
        return new RuleMeanings(rules.stream()
                .sorted(Comparator.comparing(LoadedRule::id))
                .map(RuleMeaning::new)
                .toList());
    }

    /** All rules, ordered by id. */
    public List<RuleMeaning> all() {
        return all;
    }

    /** The rules that speak to a topic, ordered by id. */
    public List<RuleMeaning> of(Topic<?> topic) {
        return byTopic.getOrDefault(topic, List.of());
    }

    /** The compiled rules, ordered by id. */
    public List<LoadedRule> rules() {
        return all.stream().map(RuleMeaning::rule).toList();
    }

    /** Those rules whose consequence has nothing forbidden about it. */
    public RuleMeanings sound() {
        return new RuleMeanings(
                all.stream().filter(rule -> rule.forbidden().isEmpty()).toList());
    }

    /** What the topics can depend on; found out when it is first asked for. */
    public RuleReach reach() {
        RuleReach known = reach;
        if (known == null) {
            // Two threads may both make one; they are alike.
            known = new RuleReach(this);
            reach = known;
        }
        return known;
    }
}
