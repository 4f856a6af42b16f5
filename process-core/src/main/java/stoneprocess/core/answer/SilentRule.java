package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A rule that asks for a value, but not on this floor.
 *
 * @param rule id of the rule
 * @param unmet every condition that does not hold, the nearest first; when all of them held, the rule would speak
 */
public record SilentRule(String rule, List<Unmet> unmet) {
    /**
     * Copies the list.
     *
     * @throws InvalidInputException when no condition is unmet, so that the rule would not be silent
     */
    public SilentRule {
        Refuse.nulls(SilentRule.class, rule, unmet);
        unmet = List.copyOf(unmet);
        if (unmet.isEmpty()) {
            throw new InvalidInputException("unmet", "none", "at least one condition that does not hold");
        }
    }

    /** The condition that is nearest to holding. */
    public Unmet nearest() {
        return unmet.get(0);
    }
}
