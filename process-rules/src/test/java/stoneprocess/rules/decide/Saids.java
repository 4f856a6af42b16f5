package stoneprocess.rules.decide;

import java.util.List;
import stoneprocess.core.decision.Contribution;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;

/** Contributions with the reasons that the ledger would keep of them. */
final class Saids {
    private Saids() {}

    static Said certain(String rule, Contribution contribution) {
        return said(rule, contribution, new MatchedFact("Known", List.of("a"), true, List.of(), List.of()));
    }

    static Said uncertain(String rule, Contribution contribution) {
        return said(rule, contribution, new MatchedFact("Unknown", List.of("a", "b"), false, List.of(), List.of()));
    }

    private static Said said(String rule, Contribution contribution, MatchedFact fact) {
        return new Said(
                contribution, new Reason(contribution.kind(), rule, Term.keys(contribution.values()), List.of(fact)));
    }

    static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).toList();
    }
}
