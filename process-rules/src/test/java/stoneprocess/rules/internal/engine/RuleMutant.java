package stoneprocess.rules.internal.engine;

import java.lang.reflect.Constructor;
import java.lang.reflect.Proxy;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.drools.model.Consequence;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.BlockN;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.internal.classify.Facts;

/**
 * A rule with one fault put into it. It runs without the engine, so that no mutant needs a compiler.
 *
 * @param id id of the rule
 * @param operator which kind of fault
 * @param what what was changed
 * @param original the rule as it stands
 * @param mutated the rule with the fault; empty when it is dropped
 */
public record RuleMutant(String id, Operator operator, String what, LoadedRule original, Optional<FlatMutant> mutated) {
    /** Kinds of faults. */
    public enum Operator {
        DROP_RULE,
        DROP_VETO,
        SHIFT_CLASS_UP,
        SHIFT_CLASS_DOWN,
        SWAP_NEED_AND_WISH,
        CHANGE_VALUE
    }

    /** The faulty rule. Opaque outside this room. */
    public static final class FlatMutant {
        private final FlatRule rule;

        private FlatMutant(FlatRule rule) {
            this.rule = rule;
        }
    }

    /** The rulebase with this rule replaced or dropped. */
    public FlatRules among(List<LoadedRule> rules) {
        List<FlatRule> flat = new ArrayList<>();
        for (LoadedRule rule : rules) {
            if (!rule.id().equals(id)) {
                flat.add(FlatRule.of(rule));
            } else {
                mutated.ifPresent(mutant -> flat.add(mutant.rule));
            }
        }
        return FlatRules.ofFlat(flat);
    }

    /** The rules as data, with this one replaced or dropped. */
    public List<LoadedRule> loaded(List<LoadedRule> rules) {
        return rules.stream()
                .filter(rule -> mutated.isPresent() || !rule.id().equals(id))
                .map(rule -> rule.id().equals(id) ? mutated.orElseThrow().rule.loaded() : rule)
                .toList();
    }

    /** True when the fault makes the rule say something else of facts, by type. */
    public boolean shows(Map<Class<?>, List<Object>> facts) {
        List<Contribution> after =
                mutated.map(mutant -> said(mutant.rule, facts)).orElse(List.of());
        return !after.equals(said(FlatRule.of(original), facts));
    }

    /** What a rule says of facts. */
    public static List<Contribution> said(LoadedRule rule, Collection<Object> facts) {
        return said(FlatRule.of(rule), byType(facts));
    }

    /** Facts by type. */
    public static Map<Class<?>, List<Object>> byType(Collection<Object> facts) {
        Map<Class<?>, List<Object>> byType = new HashMap<>();
        facts.forEach(fact -> byType.computeIfAbsent(fact.getClass(), type -> new ArrayList<>())
                .add(fact));
        return byType;
    }

    /** What the rule says of facts with its fault. */
    public List<Contribution> after(Collection<Object> facts) {
        return mutated.map(mutant -> said(mutant.rule, byType(facts))).orElse(List.of());
    }

    /** The conditions of the rule with its fault; none when it is dropped. */
    public List<FactPattern> conditions() {
        return mutated.map(mutant -> mutant.rule.loaded().conditions()).orElse(List.of());
    }

    private static List<Contribution> said(FlatRule rule, Map<Class<?>, List<Object>> byType) {
        List<List<Object>> meeting = new ArrayList<>();
        for (FactPattern condition : rule.loaded().conditions()) {
            meeting.add(byType.getOrDefault(condition.type(), List.of()).stream()
                    .filter(condition::matches)
                    .toList());
        }
        List<Firing> firings = new ArrayList<>();
        rule.fire(meeting, firings);
        return firings.stream().map(Firing::contribution).toList();
    }

    /** Every mutant of a rule. */
    public static List<RuleMutant> of(LoadedRule rule) {
        List<RuleMutant> mutants = new ArrayList<>();
        FlatRule flat = FlatRule.of(rule);
        Contribution sample = flat.contribution(witness(rule));
        mutants.add(new RuleMutant(
                rule.id(),
                sample.kind() == ContributionKind.VETO ? Operator.DROP_VETO : Operator.DROP_RULE,
                sample.kind() + " " + Term.keys(sample.values()),
                rule,
                Optional.empty()));
        for (int i = 0; i < rule.conditions().size(); i++) {
            shifted(rule, flat, i, 1, Operator.SHIFT_CLASS_UP).ifPresent(mutants::add);
            shifted(rule, flat, i, -1, Operator.SHIFT_CLASS_DOWN).ifPresent(mutants::add);
        }
        if (sample.kind() != ContributionKind.VETO) {
            ContributionKind other =
                    sample.kind() == ContributionKind.NEED ? ContributionKind.WISH : ContributionKind.NEED;
            mutants.add(saying(
                    rule,
                    flat,
                    Operator.SWAP_NEED_AND_WISH,
                    sample.kind() + " to " + other,
                    said -> new Contribution(other, said.topic(), said.subject(), said.values())));
        }
        if (!sample.values().isEmpty() && !changed(sample).equals(sample)) {
            mutants.add(saying(
                    rule,
                    flat,
                    Operator.CHANGE_VALUE,
                    Term.keys(sample.values()) + " to "
                            + Term.keys(changed(sample).values()),
                    RuleMutant::changed));
        }
        return mutants;
    }

    /** Facts that make a rule fire. */
    private static List<Object> witness(LoadedRule rule) {
        return rule.conditions().stream()
                .map(condition -> Facts.space(condition.type()).stream()
                        .filter(condition::matches)
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    /** The last value gives way to its neighbour in the domain that is not said yet. */
    private static Contribution changed(Contribution said) {
        List<? extends Term> domain = said.topic().domain();
        List<Term> values = new ArrayList<>(said.values());
        if (values.isEmpty()) {
            return said;
        }
        int at = domain.indexOf(values.get(values.size() - 1));
        for (int far = 1; far < domain.size(); far++) {
            for (int next : new int[] {at + far, at - far}) {
                if (next >= 0 && next < domain.size() && !values.contains(domain.get(next))) {
                    values.set(values.size() - 1, domain.get(next));
                    return new Contribution(said.kind(), said.topic(), said.subject(), values);
                }
            }
        }
        return said;
    }

    private static RuleMutant saying(
            LoadedRule rule, FlatRule flat, Operator operator, String what, UnaryOperator<Contribution> says) {
        FlatRule mutated = new FlatRule(rule, wrapped(flat.consequence(), says), flat.arguments());
        return new RuleMutant(rule.id(), operator, what, rule, Optional.of(new FlatMutant(mutated)));
    }

    private static Consequence wrapped(Consequence consequence, UnaryOperator<Contribution> says) {
        if (!consequence.isUsingDrools()) {
            throw new RulebaseException("A consequence inserts nothing");
        }
        BlockN block = arguments -> {
            Object[] changed = arguments.clone();
            changed[0] = Proxy.newProxyInstance(
                    Drools.class.getClassLoader(), new Class<?>[] {Drools.class}, (proxy, method, passed) -> {
                        Object[] mutated = passed.clone();
                        mutated[0] = says.apply((Contribution) passed[0]);
                        return method.invoke(arguments[0], mutated);
                    });
            consequence.getBlock().execute(changed);
        };
        return (Consequence) Proxy.newProxyInstance(
                Consequence.class.getClassLoader(),
                new Class<?>[] {Consequence.class},
                (proxy, method, passed) ->
                        method.getName().equals("getBlock") ? block : method.invoke(consequence, passed));
    }

    private static Optional<RuleMutant> shifted(LoadedRule rule, FlatRule flat, int index, int by, Operator operator) {
        FactPattern condition = rule.conditions().get(index);
        List<Object> space = Facts.space(condition.type());
        for (RecordComponent component : shiftable(condition.type())) {
            Predicate<Object> mutated = fact ->
                    shift(fact, component, by).filter(condition::matches).isPresent();
            if (space.stream().anyMatch(fact -> mutated.test(fact) != condition.matches(fact))) {
                List<FactPattern> conditions = new ArrayList<>(rule.conditions());
                conditions.set(index, pattern(rule.id(), condition.type(), mutated));
                LoadedRule loaded = new LoadedRule(rule.card(), conditions, rule.rule());
                return Optional.of(new RuleMutant(
                        rule.id(),
                        operator,
                        "condition " + (index + 1) + " on " + condition.type().getSimpleName() + "."
                                + component.getName(),
                        rule,
                        Optional.of(new FlatMutant(new FlatRule(loaded, flat.consequence(), flat.arguments())))));
            }
        }
        return Optional.empty();
    }

    /** Parts of a fact that hold classes; which one of many a fact is about is none. */
    private static List<RecordComponent> shiftable(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .filter(component -> component.getType() == Set.class
                        || component.getType().isEnum() && !OneOfMany.class.isAssignableFrom(type))
                .filter(component -> !Subject.class.isAssignableFrom(component.getType()))
                .toList();
    }

    /** The fact with its classes moved by one; empty when none is left. */
    private static Optional<Object> shift(Object fact, RecordComponent shifted, int by) {
        try {
            RecordComponent[] components = fact.getClass().getRecordComponents();
            Object[] parts = new Object[components.length];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = components[i].getAccessor().invoke(fact);
                if (components[i].getName().equals(shifted.getName())) {
                    Optional<Object> moved = moved(parts[i], by);
                    if (moved.isEmpty()) {
                        return Optional.empty();
                    }
                    parts[i] = moved.get();
                }
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = fact.getClass().getDeclaredConstructor(types);
            return Optional.of(constructor.newInstance(parts));
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException("The fact " + fact + " cannot be shifted", e);
        }
    }

    private static Optional<Object> moved(Object part, int by) {
        if (part instanceof Enum<?> one) {
            return moved(one, by).map(found -> found);
        }
        Set<?> classes = (Set<?>) part;
        List<Object> all = new ArrayList<>();
        for (Object one : classes) {
            moved((Enum<?>) one, by).ifPresent(all::add);
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(enumSet(all));
    }

    private static Optional<Enum<?>> moved(Enum<?> one, int by) {
        Enum<?>[] constants = one.getDeclaringClass().getEnumConstants();
        int next = one.ordinal() + by;
        return next < 0 || next >= constants.length ? Optional.empty() : Optional.of(constants[next]);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Set<?> enumSet(List<Object> constants) {
        return EnumSet.copyOf((Collection<Enum>) (Collection) constants);
    }

    private static FactPattern pattern(String id, Class<?> type, Predicate<Object> test) {
        return patternOf(id, type, test);
    }

    private static <T> FactPattern patternOf(String id, Class<T> type, Predicate<Object> test) {
        Variable<T> fact = DSL.declarationOf(type, "fact");
        Rule rule = PatternDSL.rule("stoneprocess.rules.chapter.mutated", "Mutant of " + id)
                .build(PatternDSL.pattern(fact).expr("mutated condition of " + id, test::test), DSL.execute(() -> {}));
        return FactPattern.of(id, rule.getView().getSubConditions()).get(0);
    }
}
