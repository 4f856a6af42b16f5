package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.PolicyKind;

/**
 * One link of a derivation.
 *
 * @param outcome how a matter was closed, with the reasons that won and lost
 * @param policy how its reasons became one outcome
 * @param restsOn matters that its facts were concluded from, or that went into its computing
 */
public record Ground(Outcome outcome, PolicyKind policy, List<Matter> restsOn) {
    public Ground {
        Refuse.nulls(Ground.class, outcome, policy, restsOn);
        restsOn = List.copyOf(restsOn);
    }

    public Matter matter() {
        return Matter.of(outcome);
    }

    /** Every reason, those that won first. */
    public List<Reason> reasons() {
        return outcome.reasons();
    }
}
