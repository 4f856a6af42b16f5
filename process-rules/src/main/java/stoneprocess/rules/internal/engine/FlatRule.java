package stoneprocess.rules.internal.engine;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Binding;
import org.drools.model.Condition;
import org.drools.model.Consequence;
import org.drools.model.Drools;
import org.drools.model.Pattern;
import org.drools.model.Variable;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Contribution;

/** One rule that fires without an engine. Safe to share between threads. */
public final class FlatRule {
    /** Reads an argument from the matched facts: a fact, or a part of one that the condition binds. */
    @FunctionalInterface
    interface Argument {
        Object of(List<Object> matched);
    }

    private final LoadedRule loaded;
    private final Consequence consequence;
    private final List<Argument> arguments;
    // What a rule says that copies nothing from its facts is always the same.
    private volatile @Nullable Contribution always;

    /**
     * @param loaded the rule
     * @param consequence its consequence as it was compiled
     * @param arguments what its consequence takes, in order
     */
    FlatRule(LoadedRule loaded, Consequence consequence, List<Argument> arguments) {
        this.loaded = loaded;
        this.consequence = consequence;
        this.arguments = List.copyOf(arguments);
    }

    LoadedRule loaded() {
        return loaded;
    }

    Consequence consequence() {
        return consequence;
    }

    List<Argument> arguments() {
        return arguments;
    }

    /** A rule with its consequence as it was compiled. */
    public static FlatRule of(LoadedRule loaded) {
        Map<Variable<?>, Argument> bound = new HashMap<>();
        int place = 0;
        for (Condition condition : loaded.rule().getView().getSubConditions()) {
            if (condition instanceof Pattern<?> pattern) {
                int index = place++;
                bound.put(pattern.getPatternVariable(), matched -> matched.get(index));
                for (Binding part : pattern.getBindings()) {
                    bound.put(part.getBoundVariable(), matched -> part.eval(matched.get(index)));
                }
            }
        }
        Consequence consequence = loaded.rule().getDefaultConsequence();
        List<Argument> arguments = new ArrayList<>();
        for (Variable<?> wanted : consequence.getDeclarations()) {
            Argument argument = bound.get(wanted);
            if (argument == null) {
                throw new RulebaseException("Rule " + loaded.id() + " says something about what it does not match");
            }
            arguments.add(argument);
        }
        return new FlatRule(loaded, consequence, arguments);
    }

    /**
     * Adds a firing for every combination of facts that meets all conditions.
     *
     * @param meeting for each condition, in their order, the facts that meet it
     */
    void fire(List<List<Object>> meeting, List<Firing> firings) {
        fire(meeting, new Object[meeting.size()], 0, firings);
    }

    private void fire(List<List<Object>> meeting, Object[] matched, int index, List<Firing> firings) {
        if (index == matched.length) {
            List<Object> all = List.of(matched);
            firings.add(new Firing(loaded.card(), contribution(all), all));
            return;
        }
        for (Object fact : meeting.get(index)) {
            matched[index] = fact;
            fire(meeting, matched, index + 1, firings);
        }
    }

    /** True when it says the same whichever facts meet its conditions. */
    public boolean alwaysSaysTheSame() {
        return arguments.isEmpty();
    }

    /** What the rule says of facts that meet its conditions, one for each, in their order. */
    public Contribution contribution(List<Object> matched) {
        Contribution known = always;
        if (known == null) {
            known = say(matched);
            if (alwaysSaysTheSame()) {
                always = known;
            }
        }
        return known;
    }

    private Contribution say(List<Object> matched) {
        List<Object> inserted = new ArrayList<>();
        List<Object> values = new ArrayList<>();
        if (consequence.isUsingDrools()) {
            values.add(taking(inserted));
        }
        arguments.forEach(argument -> values.add(argument.of(matched)));
        try {
            consequence.getBlock().execute(values.toArray());
        } catch (Exception e) {
            throw new RulebaseException("Rule " + loaded.id() + " failed: " + e.getMessage(), e);
        }
        if (inserted.size() != 1 || !(inserted.get(0) instanceof Contribution contribution)) {
            throw new RulebaseException("Rule " + loaded.id() + " does not make one contribution");
        }
        return contribution;
    }

    /** Takes what a consequence inserts; whatever else it could ask of an engine is refused. */
    private static Drools taking(List<Object> inserted) {
        return (Drools) Proxy.newProxyInstance(
                FlatRule.class.getClassLoader(), new Class<?>[] {Drools.class}, (proxy, method, arguments) -> {
                    if (!method.getName().equals("insert")) {
                        throw new RulebaseException("A rule does more than to make its contribution");
                    }
                    inserted.add(arguments[0]);
                    return null;
                });
    }
}
