package stoneprocess.rules.internal.meaning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;

/** What one condition of a rule accepts, in facts and in classes. Immutable and safe to share between threads. */
public final class ConditionMeaning {
    private final FactPattern pattern;
    private final List<Object> accepted;
    private final Map<String, List<Term>> wanted = new LinkedHashMap<>();

    /**
     * @param pattern the condition
     * @param accepted those facts that meet it, or some of them where the rule says something else of the others
     */
    ConditionMeaning(FactPattern pattern, List<Object> accepted) {
        this.pattern = pattern;
        this.accepted = accepted;
        if (type() != Step.class) {
            accepted.forEach(fact -> {
                List<Term> classes = wanted.computeIfAbsent(Facts.name(fact), name -> new ArrayList<>());
                if (classes(fact).size() == 1) {
                    classes.addAll(classes(fact));
                }
            });
        }
    }

    /** The type of fact that it reads. */
    public Class<?> type() {
        return pattern.type();
    }

    /** Of all facts that a rule can tell apart, those that meet it. */
    public List<Object> accepted() {
        return accepted;
    }

    /** True when a fact meets it. */
    public boolean holds(Object fact) {
        return pattern.matches(fact) && (accepted.size() == pattern.accepted().size() || accepted.contains(fact));
    }

    /** The classes that will do once they are known, by the name of the fact; none for steps. */
    public Map<String, List<Term>> wanted() {
        return wanted;
    }

    /** The classes that a fact may be; not for steps. */
    @SuppressWarnings("unchecked")
    public static Set<Term> classes(Object fact) {
        return (Set<Term>) (Set<?>) ((Feature<?>) fact).mayBe();
    }

    /** The condition as data; a condition on a step gives one for each part that it asks about. */
    List<RuleContent.Condition> content(String rule) {
        return type() == Step.class ? ofStep(rule) : List.of(ofFact(rule));
    }

    private List<RuleContent.Condition> ofStep(String rule) {
        List<RuleContent.Condition> conditions = new ArrayList<>();
        int combinations = 1;
        for (StepPart part : StepPart.values()) {
            Set<Term> asked = new LinkedHashSet<>();
            accepted.forEach(step -> asked.add(part.of(step)));
            combinations *= asked.size();
            if (asked.size() < part.all().size()) {
                conditions.add(condition(List.of(part.fact()), part.all(), asked::contains, false));
            }
        }
        if (combinations != accepted.size()) {
            throw new RulebaseException("Rule " + rule + " asks of a grit what its parts alone do not tell");
        }
        return conditions;
    }

    private RuleContent.Condition ofFact(String rule) {
        Map<String, Boolean> notKnown = new LinkedHashMap<>();
        accepted.forEach(fact -> notKnown.merge(Facts.name(fact), classes(fact).size() > 1, Boolean::logicalOr));
        if (Set.copyOf(wanted.values()).size() != 1
                || Set.copyOf(notKnown.values()).size() != 1) {
            throw new RulebaseException("Rule " + rule + " asks different things of several facts in one condition");
        }
        Enum<?> anyClass = (Enum<?>) classes(accepted.get(0)).iterator().next();
        return condition(
                List.copyOf(wanted.keySet()),
                Stream.of(anyClass.getDeclaringClass().getEnumConstants())
                        .map(Term.class::cast)
                        .toList(),
                wanted.values().iterator().next()::contains,
                notKnown.values().iterator().next());
    }

    private static RuleContent.Condition condition(
            List<String> facts, List<Term> all, Predicate<Term> asked, boolean orNotKnown) {
        return new RuleContent.Condition(
                facts,
                all.stream().filter(asked).toList(),
                all.stream().filter(asked.negate()).toList(),
                orNotKnown);
    }
}
