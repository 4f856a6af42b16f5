package stoneprocess.rules.testkit.law;

import stoneprocess.rules.Advisor;
import stoneprocess.rules.testkit.RulebaseContract;

/** The contract holds of the shipped rules. */
class ContractTest implements RulebaseContract {
    private static final Advisor ADVISOR = Advisor.standard();

    @Override
    public Advisor advisor() {
        return ADVISOR;
    }
}
