package stoneprocess.rules;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.rules.RuleContent.Condition;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;

/**
 * Reads what rules say. Conditions are asked about every fact that a rule can tell apart; a consequence is no data, so it
 * is run on facts that meet them.
 */
final class RuleReader {
    private static final List<RecordComponent> STEP_PARTS = Stream.of(Step.class.getRecordComponents())
            .filter(part -> Term.class.isAssignableFrom(part.getType()))
            .toList();

    private final FlatRules flat;

    RuleReader(List<LoadedRule> rules) {
        this.flat = FlatRules.of(rules);
    }

    RuleContent read(LoadedRule rule) {
        List<List<Object>> accepted =
                rule.conditions().stream().map(RuleReader::accepted).toList();
        List<Condition> conditions = new ArrayList<>();
        for (int i = 0; i < accepted.size(); i++) {
            if (accepted.get(i).isEmpty()) {
                throw new RulebaseException("Rule " + rule.id() + " can never fire");
            }
            conditions.addAll(conditions(rule, rule.conditions().get(i).type(), accepted.get(i)));
        }
        List<Object> first = accepted.stream().map(facts -> facts.get(0)).toList();
        return new RuleContent(rule.card(), conditions, flat.contribution(rule, first), follows(rule, accepted, first));
    }

    private static List<Object> accepted(FactPattern pattern) {
        return Facts.space(pattern.type()).stream().filter(pattern::matches).toList();
    }

    /** The fact of whose classes the rule says something else each time. */
    private Optional<String> follows(LoadedRule rule, List<List<Object>> accepted, List<Object> first) {
        for (int i = 0; i < accepted.size(); i++) {
            if (rule.conditions().get(i).type() == Step.class) {
                continue;
            }
            Set<Contribution> said = new LinkedHashSet<>();
            for (Object fact : accepted.get(i)) {
                List<Object> matched = new ArrayList<>(first);
                matched.set(i, fact);
                said.add(flat.contribution(rule, matched));
            }
            if (said.size() > 1) {
                return Optional.of(Facts.matched(first.get(i)).name());
            }
        }
        return Optional.empty();
    }

    private static List<Condition> conditions(LoadedRule rule, Class<?> type, List<Object> accepted) {
        return type == Step.class ? ofStep(rule, accepted) : List.of(ofFact(rule, type, accepted));
    }

    /** What a rule asks of a grit, part by part. */
    private static List<Condition> ofStep(LoadedRule rule, List<Object> accepted) {
        List<Condition> conditions = new ArrayList<>();
        int combinations = 1;
        for (RecordComponent part : STEP_PARTS) {
            Set<Object> wanted = new LinkedHashSet<>();
            accepted.forEach(step -> wanted.add(part(part, step)));
            combinations *= wanted.size();
            List<Term> all = constants(part.getType());
            if (wanted.size() < all.size()) {
                conditions.add(condition(List.of("Step." + part.getName()), all, wanted, false));
            }
        }
        if (combinations != accepted.size()) {
            throw new RulebaseException("Rule " + rule.id() + " asks of a grit what its parts alone do not tell");
        }
        return conditions;
    }

    private static Condition ofFact(LoadedRule rule, Class<?> type, List<Object> accepted) {
        Map<String, Set<Object>> wanted = new LinkedHashMap<>();
        Map<String, Boolean> unknown = new LinkedHashMap<>();
        for (Object fact : accepted) {
            String name = Facts.matched(fact).name();
            Set<?> classes = ((Feature<?>) fact).mayBe();
            Set<Object> known = wanted.computeIfAbsent(name, key -> new LinkedHashSet<>());
            unknown.merge(name, classes.size() > 1, Boolean::logicalOr);
            if (classes.size() == 1) {
                known.addAll(classes);
            }
        }
        if (new LinkedHashSet<>(wanted.values()).size() != 1 || new LinkedHashSet<>(unknown.values()).size() != 1) {
            throw new RulebaseException(
                    "Rule " + rule.id() + " asks different things of several facts in one condition");
        }
        Feature<?> one = (Feature<?>) Facts.space(type).get(0);
        List<Term> all = constants(one.mayBe().iterator().next().getDeclaringClass());
        return condition(
                List.copyOf(wanted.keySet()),
                all,
                wanted.values().iterator().next(),
                unknown.values().iterator().next());
    }

    private static Condition condition(List<String> facts, List<Term> all, Set<Object> wanted, boolean orNotKnown) {
        return new Condition(
                facts,
                all.stream().filter(wanted::contains).toList(),
                all.stream().filter(term -> !wanted.contains(term)).toList(),
                orNotKnown);
    }

    private static List<Term> constants(Class<?> type) {
        return Stream.of(type.getEnumConstants()).map(Term.class::cast).toList();
    }

    private static Object part(RecordComponent part, Object step) {
        try {
            return part.getAccessor().invoke(step);
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException("The fact " + step + " cannot be read", e);
        }
    }
}
