package stoneprocess.rules.audit;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.audit.RuleReport.ConditionReport;
import stoneprocess.rules.audit.RuleReport.Neighbour;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.Firing;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;

/**
 * Checks one rule at a time. What it accepts is read from its conditions, over every fact that a rule can tell apart;
 * the engine then confirms it. Builds one engine for each chapter, when first asked. Not safe to share between threads.
 */
public final class RuleCheck {
    private final Map<String, LoadedRule> rules = new LinkedHashMap<>();
    private final Map<String, Engine> chapters = new HashMap<>();

    private RuleCheck(Collection<LoadedRule> rules) {
        rules.forEach(rule -> this.rules.put(rule.id(), rule));
    }

    /** A check of the shipped rules. */
    public static RuleCheck shipped() {
        return of(ShippedRules.load());
    }

    /** A check of any rules. */
    public static RuleCheck of(Collection<LoadedRule> rules) {
        return new RuleCheck(rules);
    }

    /** Ids of the rules that can be checked, in the order given. */
    public List<String> ids() {
        return List.copyOf(rules.keySet());
    }

    /**
     * Checks one rule.
     *
     * @throws InvalidInputException when there is no such rule
     * @throws RulebaseException when no fact meets one of its conditions, so that it can never fire
     */
    public RuleReport check(String id) {
        LoadedRule rule = rules.get(id);
        if (rule == null) {
            throw new InvalidInputException("rule", id, "the id of a rule of this rulebase");
        }
        Stage stage = rule.card().topic().stage();
        List<ConditionReport> conditions = conditions(rule);
        List<Object> witness = new ArrayList<>();
        for (ConditionReport condition : conditions) {
            if (condition.accepted().isEmpty()) {
                throw new RulebaseException("Rule " + id + " can never fire: no "
                        + condition.type().getSimpleName() + " meets its conditions");
            }
            witness.add(condition.accepted().get(0));
        }
        List<Neighbour> neighbours = neighbours(conditions, witness);
        Engine alone = new Engine(List.of(rule));
        List<Neighbour> fired = neighbours.stream()
                .filter(neighbour -> !said(alone, stage, rule.card(), with(witness, neighbour))
                        .isEmpty())
                .toList();
        return new RuleReport(
                rule.card(),
                stage,
                conditions,
                witness,
                neighbours,
                said(alone, stage, rule.card(), witness),
                said(chapter(rule.card().chapter()), stage, rule.card(), inCompany(witness)),
                fired);
    }

    private static List<ConditionReport> conditions(LoadedRule rule) {
        Map<Object, List<FactPattern>> byFact = new LinkedHashMap<>();
        for (FactPattern condition : rule.conditions()) {
            // Of the facts of which there is one for each constant, each condition names one.
            boolean named = OneOfMany.class.isAssignableFrom(condition.type());
            byFact.computeIfAbsent(named ? condition : condition.type(), fact -> new ArrayList<>())
                    .add(condition);
        }
        return byFact.values().stream().map(RuleCheck::condition).toList();
    }

    private static ConditionReport condition(List<FactPattern> patterns) {
        Class<?> type = patterns.get(0).type();
        List<Object> accepted = new ArrayList<>();
        List<Object> refused = new ArrayList<>();
        for (Object fact : Facts.space(type)) {
            boolean meetsAll = patterns.stream().allMatch(pattern -> pattern.matches(fact));
            (meetsAll ? accepted : refused).add(fact);
        }
        return new ConditionReport(type, accepted, refused);
    }

    private static List<Neighbour> neighbours(List<ConditionReport> conditions, List<Object> witness) {
        List<Neighbour> neighbours = new ArrayList<>();
        for (int i = 0; i < witness.size(); i++) {
            for (Object refused : conditions.get(i).refused()) {
                if (classesApart(witness.get(i), refused) == 1) {
                    neighbours.add(new Neighbour(i, refused));
                }
            }
        }
        return neighbours;
    }

    private static List<Object> with(List<Object> witness, Neighbour neighbour) {
        List<Object> facts = new ArrayList<>(witness);
        facts.set(neighbour.position(), neighbour.fact());
        return facts;
    }

    /** How many parts of two facts differ; a subject only names a fact. */
    private static long classesApart(Object one, Object other) {
        long apart = 0;
        for (RecordComponent component : one.getClass().getRecordComponents()) {
            if (!Subject.class.isAssignableFrom(component.getType())
                    && !part(component, one).equals(part(component, other))) {
                apart++;
            }
        }
        return apart;
    }

    private static Object part(RecordComponent component, Object fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException("The fact " + fact + " cannot be read", e);
        }
    }

    /** The witness among facts of all other types, so that other rules fire beside it. */
    private static List<Object> inCompany(List<Object> witness) {
        List<Object> facts = new ArrayList<>(witness);
        for (Class<?> type : Facts.types()) {
            if (witness.stream().noneMatch(type::isInstance)) {
                List<Object> space = Facts.space(type);
                facts.add(space.get(space.size() - 1));
            }
        }
        return facts;
    }

    private Engine chapter(String name) {
        return chapters.computeIfAbsent(
                name,
                chapter -> new Engine(rules.values().stream()
                        .filter(rule -> rule.card().chapter().equals(chapter))
                        .toList()));
    }

    private static List<Contribution> said(Engine engine, Stage stage, Card card, List<Object> facts) {
        try (EngineRun run = engine.start()) {
            facts.forEach(run::insert);
            return run.fire(stage).stream()
                    .filter(firing -> firing.card().id().equals(card.id()))
                    .map(Firing::contribution)
                    .toList();
        }
    }
}
