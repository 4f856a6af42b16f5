package stoneprocess.rules.internal.meaning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRule;
import stoneprocess.rules.internal.engine.LoadedRule;

/**
 * What one rule reads and says. Conditions are asked about every fact that a rule can tell apart; a consequence is no
 * data, so it is run without an engine on facts that meet them. Immutable to its users and safe to share between threads.
 */
public final class RuleMeaning {
    private final LoadedRule rule;
    private final Topic<?> topic;
    private final FlatRule flat;
    private volatile @Nullable List<Saying> sayings;
    private volatile @Nullable Set<Term> values;

    RuleMeaning(LoadedRule rule) {
        this.rule = rule;
        this.topic = rule.card().topic();
        this.flat = FlatRule.of(rule);
    }

    public String id() {
        return rule.id();
    }

    public Card card() {
        return rule.card();
    }

    /** The topic that it speaks to. */
    public Topic<?> topic() {
        return topic;
    }

    /** The compiled rule. */
    public LoadedRule rule() {
        return rule;
    }

    /** Its conditions, one for each fact that it matches. */
    public List<FactPattern> conditions() {
        return rule.conditions();
    }

    /** The types of fact that it reads. */
    public Stream<Class<?>> types() {
        return conditions().stream().<Class<?>>map(FactPattern::type).distinct();
    }

    /** Names of the survey fields and kinds of damage that it reads, those behind the topics that it reads left out. */
    public Stream<String> fields() {
        return types().flatMap(type -> Facts.reads(type).stream());
    }

    /** True when each of its conditions can be met. */
    public boolean canFire() {
        return conditions().stream().noneMatch(condition -> condition.accepted().isEmpty());
    }

    /** What it can say; nothing when it can never fire. */
    public List<Saying> sayings() {
        List<Saying> found = sayings;
        if (found == null) {
            // Two threads may both look; they find the same.
            found = canFire() ? findSayings() : List.of();
            sayings = found;
        }
        return found;
    }

    /** All values that it can speak of. */
    public Set<Term> values() {
        Set<Term> found = values;
        if (found == null) {
            found = sayings().stream()
                    .<Term>flatMap(saying -> saying.says().values().stream())
                    .collect(Collectors.toUnmodifiableSet());
            values = found;
        }
        return found;
    }

    /** The first of its conditions from whose fact it copies what it says. */
    public Optional<FactPattern> follows() {
        for (int i = 0; i < conditions().size(); i++) {
            if (sayings().stream().map(accepting(i)).distinct().count() > 1) {
                return Optional.of(conditions().get(i));
            }
        }
        return Optional.empty();
    }

    private static Function<Saying, List<Object>> accepting(int condition) {
        return saying -> saying.conditions().get(condition).accepted();
    }

    /** What is forbidden about its consequence; nothing when it makes one contribution to its own topic. */
    public List<String> forbidden() {
        if (!canFire()) {
            return List.of();
        }
        try {
            boolean isOwn = saysOf(firstOfEach()).topic().equals(topic);
            return isOwn ? List.of() : List.of("other-topic");
        } catch (RulebaseException e) {
            return List.of("not-one-contribution");
        }
    }

    /** The rule as data. */
    public RuleContent content() {
        if (!canFire()) {
            throw new RulebaseException("Rule " + id() + " can never fire");
        }
        return new RuleContent(
                card(),
                conditions().stream()
                        .map(condition -> new ConditionMeaning(condition, condition.accepted()))
                        .flatMap(condition -> condition.content(id()).stream())
                        .toList(),
                sayings().get(0).says(),
                follows().map(condition -> Facts.name(condition.accepted().get(0))));
    }

    private List<Saying> findSayings() {
        List<List<Object>> all =
                conditions().stream().map(FactPattern::accepted).toList();
        List<List<List<Object>>> parted = List.of(all);
        for (int i = 0; !flat.alwaysSaysTheSame() && i < all.size(); i++) {
            int condition = i;
            parted =
                    parted.stream().flatMap(facts -> partedBy(facts, condition)).toList();
        }
        return parted.stream().map(this::saying).toList();
    }

    /** Facts that are parted by what the rule says of those of one condition. */
    private Stream<List<List<Object>>> partedBy(List<List<Object>> facts, int condition) {
        List<Object> matched = firstOfEach(facts);
        Map<Contribution, List<Object>> byContribution = new LinkedHashMap<>();
        for (Object fact : facts.get(condition)) {
            matched.set(condition, fact);
            byContribution
                    .computeIfAbsent(Saying.ofAnyStep(saysOf(matched)), says -> new ArrayList<>())
                    .add(fact);
        }
        return byContribution.values().stream().map(alike -> {
            List<List<Object>> narrowed = new ArrayList<>(facts);
            narrowed.set(condition, alike);
            return narrowed;
        });
    }

    private Saying saying(List<List<Object>> accepted) {
        List<ConditionMeaning> meanings = new ArrayList<>();
        for (int i = 0; i < accepted.size(); i++) {
            meanings.add(new ConditionMeaning(conditions().get(i), accepted.get(i)));
        }
        return new Saying(id(), saysOf(firstOfEach(accepted)), meanings);
    }

    private Contribution saysOf(List<Object> matched) {
        return flat.contribution(List.copyOf(matched));
    }

    private List<Object> firstOfEach() {
        return firstOfEach(conditions().stream().map(FactPattern::accepted).toList());
    }

    private static List<Object> firstOfEach(List<List<Object>> facts) {
        return facts.stream().map(accepted -> accepted.get(0)).collect(Collectors.toCollection(ArrayList::new));
    }
}
