package stoneprocess.rules.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.quantity.Quantity;

/**
 * What a house changes in the shipped rulebase. Immutable; applied before the rulebase is built, so that a rule that is
 * switched off never fires. Every change says who made it and why.
 *
 * @param switchedOff rules that never fire
 * @param retuned parameters with other values
 */
public record Overlay(List<SwitchedOff> switchedOff, List<Retuned> retuned) {
    /** Version of the JSON form. */
    public static final String FORMAT = "overlay/1";

    /**
     * A rule that never fires.
     *
     * @param rule id of the rule
     * @param who who decided
     * @param why why
     */
    public record SwitchedOff(String rule, String who, String why) {
        public SwitchedOff {
            Refuse.nulls(SwitchedOff.class, rule, who, why);
            require("overlay." + rule + ".who", who);
            require("overlay." + rule + ".why", why);
        }
    }

    /**
     * A parameter with another value.
     *
     * @param parameter name of the parameter
     * @param value the value that holds in this house
     * @param who who decided
     * @param why why
     */
    public record Retuned(String parameter, Quantity value, String who, String why) {
        public Retuned {
            Refuse.nulls(Retuned.class, parameter, value, who, why);
            require("overlay." + parameter + ".who", who);
            require("overlay." + parameter + ".why", why);
        }
    }

    public Overlay {
        Refuse.nulls(Overlay.class, switchedOff, retuned);
        switchedOff = List.copyOf(switchedOff);
        retuned = List.copyOf(retuned);
    }

    /** No change. */
    public static Overlay none() {
        return new Overlay(List.of(), List.of());
    }

    /** This overlay with one more rule switched off. */
    public Overlay switchOff(String rule, String who, String why) {
        List<SwitchedOff> more = new ArrayList<>(switchedOff);
        more.add(new SwitchedOff(rule, who, why));
        return new Overlay(more, retuned);
    }

    /** This overlay with one more parameter retuned. */
    public Overlay retune(String parameter, Quantity value, String who, String why) {
        List<Retuned> more = new ArrayList<>(retuned);
        more.add(new Retuned(parameter, value, who, why));
        return new Overlay(switchedOff, more);
    }

    /** The change that switches a rule off, if there is one. */
    public Optional<SwitchedOff> switchedOff(String rule) {
        return switchedOff.stream().filter(change -> change.rule().equals(rule)).findFirst();
    }

    /** Every change with who answers for it, as it stands in the stamp of the rulebase. */
    public List<HouseRule> houseRules() {
        List<HouseRule> rules = new ArrayList<>();
        switchedOff.forEach(change ->
                rules.add(new HouseRule(HouseRuleKind.SWITCHED_OFF, change.rule(), change.who(), change.why())));
        retuned.forEach(change ->
                rules.add(new HouseRule(HouseRuleKind.RETUNED, change.parameter(), change.who(), change.why())));
        return List.copyOf(rules);
    }

    private static void require(String field, String text) {
        Printable.require(field, text, 500, "a text, for every house rule says who and why,");
    }
}
