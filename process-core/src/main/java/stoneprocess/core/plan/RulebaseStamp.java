package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * Which rules made a recommendation.
 *
 * @param version version of the library
 * @param hash SHA-256 over what the rules, their cards, the parameters and the shipped tables say and over the version,
 *     in hexadecimal; remarks and layout change nothing
 * @param switchedOff ids of rules that house rules switched off, ordered
 * @param house every change of the house, with who answers for it, in the order in which the house gave them: rules
 *     switched off, then parameters retuned; none for the shipped rulebase
 */
public record RulebaseStamp(String version, String hash, List<String> switchedOff, List<HouseRule> house) {
    public RulebaseStamp {
        Refuse.nulls(RulebaseStamp.class, version, hash, switchedOff, house);
        switchedOff = List.copyOf(switchedOff);
        house = List.copyOf(house);
    }
}
