package stoneprocess.core.plan;

import java.util.List;

/**
 * Which rules made a recommendation.
 *
 * @param version version of the library
 * @param hash SHA-256 over rules, cards and parameters, in hexadecimal
 * @param switchedOff ids of rules that house rules switched off
 */
public record RulebaseStamp(String version, String hash, List<String> switchedOff) {
    public RulebaseStamp {
        switchedOff = List.copyOf(switchedOff);
    }
}
