package stoneprocess.rules.decide;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Contribution;

/** Contributions with the reasons that the ledger would keep of them. */
final class Statements {
    private Statements() {}

    static Stated certain(String rule, Contribution contribution) {
        return said(rule, contribution, new MatchedFact("Known", List.of("a"), true, List.of(), List.of()));
    }

    static Stated uncertain(String rule, Contribution contribution) {
        return said(rule, contribution, new MatchedFact("Unknown", List.of("a", "b"), false, List.of(), List.of()));
    }

    /** A certain contribution that rests on facts read from these fields, one each; an empty name is a fact of no field. */
    static Stated from(String rule, Contribution contribution, String... names) {
        return said(
                rule,
                contribution,
                Stream.of(names)
                        .map(field -> field.isEmpty() ? List.<String>of() : List.of(field))
                        .map(fields -> new MatchedFact("Known", List.of("a"), true, fields, List.of()))
                        .toArray(MatchedFact[]::new));
    }

    private static Stated said(String rule, Contribution contribution, MatchedFact... facts) {
        return new Stated(contribution, new Reason(contribution.kind(), rule, contribution.values(), List.of(facts)));
    }

    static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).toList();
    }
}
