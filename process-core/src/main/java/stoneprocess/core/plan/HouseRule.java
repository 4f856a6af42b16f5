package stoneprocess.core.plan;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;

/**
 * One change that a house made to the shipped rulebase, and who answers for it.
 *
 * @param kind what was changed
 * @param name id of the rule that is switched off, or name of the parameter that is retuned; its value stands in the
 *     recommendation's parameters
 * @param who who decided, not blank
 * @param why why, not blank
 */
public record HouseRule(HouseRuleKind kind, String name, String who, String why) {
    /**
     * Checks the texts.
     *
     * @throws InvalidInputException for a blank text
     */
    public HouseRule {
        Refuse.nulls(HouseRule.class, kind, name, who, why);
        require("name", name);
        require("who", who);
        require("why", why);
    }

    private static void require(String part, String text) {
        Printable.require("house-rule." + part, text, 500, "a text, for every house rule says who and why,");
    }
}
