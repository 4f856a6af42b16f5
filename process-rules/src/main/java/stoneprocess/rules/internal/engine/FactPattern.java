package stoneprocess.rules.internal.engine;

import java.util.List;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Pattern;
import org.drools.model.SingleConstraint;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.rules.internal.classify.Facts;

/**
 * One condition of a rule: a type of fact and a test on it alone. The shipped rules are flat, so a rule is the
 * conjunction of these, and each can be asked about any fact without a session.
 */
public final class FactPattern {
    private final Class<?> type;
    private final Constraint constraint;
    private final String rule;
    private volatile @Nullable List<Object> accepted;

    private FactPattern(Class<?> type, Constraint constraint, String rule) {
        this.type = type;
        this.constraint = constraint;
        this.rule = rule;
    }

    /** The conditions of a rule's view; anything but flat patterns is refused. */
    static List<FactPattern> of(String rule, List<Condition> conditions) {
        return conditions.stream()
                .filter(condition -> condition.getType() != Condition.Type.CONSEQUENCE)
                .map(condition -> of(rule, condition))
                .toList();
    }

    private static FactPattern of(String rule, Condition condition) {
        if (condition instanceof Pattern<?> pattern) {
            return new FactPattern(pattern.getPatternVariable().getType(), pattern.getConstraint(), rule);
        }
        throw new RulebaseException(
                "Rule " + rule + " has a condition that is not a flat pattern: " + condition.getType());
    }

    /** The type of fact that it reads. */
    public Class<?> type() {
        return type;
    }

    /** True when the fact meets the condition. A fact of another type never does. */
    public boolean matches(Object fact) {
        return type.isInstance(fact) && holds(constraint, fact);
    }

    /** Of all facts of its type that a rule can tell apart, those that meet it; made when first asked for. */
    public List<Object> accepted() {
        List<Object> found = accepted;
        if (found == null) {
            // Two threads may both look; they find the same.
            found = Facts.space(type).stream().filter(this::matches).toList();
            accepted = found;
        }
        return found;
    }

    private boolean holds(Constraint tested, Object fact) {
        return switch (tested.getType()) {
            case SINGLE -> single((SingleConstraint) tested, fact);
            case AND, MULTIPLE -> {
                for (Constraint child : tested.getChildren()) {
                    if (!holds(child, fact)) {
                        yield false;
                    }
                }
                yield true;
            }
            case OR -> {
                for (Constraint child : tested.getChildren()) {
                    if (holds(child, fact)) {
                        yield true;
                    }
                }
                yield false;
            }
            default -> throw new RulebaseException("Rule " + rule + " has a test of kind " + tested.getType());
        };
    }

    private boolean single(SingleConstraint single, Object fact) {
        if (single == SingleConstraint.TRUE || single.getVariables().length == 0) {
            return true;
        }
        if (single.getVariables().length > 1) {
            throw new RulebaseException("Rule " + rule + " compares two facts");
        }
        try {
            return single.getPredicate().test(fact);
        } catch (Exception e) {
            throw new RulebaseException("Rule " + rule + " cannot test " + fact, e);
        }
    }
}
