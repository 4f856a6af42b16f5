package merrowhithe;

import stoneprocess.rules.Advisor;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.testkit.RulebaseContract;

/** The rules of the works yard at Quay Hall: the painter masks the walls. */
class QuayHallRulesTest implements RulebaseContract {
    private static final Overlay HOUSE =
            Overlay.none().switchOff("PRE-001", "yard foreman", "the painter masks the walls");
    private static final Advisor ADVISOR = Advisor.of(Rulebase.with(HOUSE), Options.defaults());

    @Override
    public Advisor advisor() {
        return ADVISOR;
    }
}
