package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.log.Sign;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.decide.Ranked;
import stoneprocess.rules.feature.CausesFound;
import stoneprocess.rules.feature.OnSite;

/** How the causes of a fault stand once they are ranked. */
final class Suspicion {
    private Suspicion() {}

    /** How a cause stands; not suggested while nothing is decided about the causes. */
    static Set<Standing> of(Situation situation, Fault fault) {
        return EnumSet.of(situation
                .decision(Topics.CAUSES, Subject.FLOOR)
                .map(causes -> standing(causes, fault))
                .orElse(Standing.NOT_SUGGESTED));
    }

    /**
     * How a cause stands in the decision about the causes. For each sign seen, the cause for which most speaks leads, unless
     * it is ruled out.
     */
    static Standing standing(Decision<Fault> causes, Fault fault) {
        List<Reason> reasons = Stream.concat(causes.won().stream(), causes.vetoed().stream())
                .filter(reason -> reason.kind() == ContributionKind.WISH)
                .toList();
        if (!Ranked.weights(reasons).containsKey(fault)) {
            return Standing.NOT_SUGGESTED;
        }
        if (!causes.values().contains(fault)) {
            return Standing.EXCLUDED;
        }
        boolean leads = Stream.of(Sign.values()).anyMatch(sign -> leads(causes, fault, ofSign(sign, reasons)));
        return leads ? Standing.LEADING : Standing.POSSIBLE;
    }

    private static List<Reason> ofSign(Sign sign, List<Reason> reasons) {
        String name = FactPerConstant.name(OnSite.SignSeen.class, sign);
        return reasons.stream()
                .filter(reason ->
                        reason.facts().stream().anyMatch(fact -> fact.name().equals(name)))
                .toList();
    }

    private static boolean leads(Decision<Fault> causes, Fault fault, List<Reason> reasons) {
        Map<Term, Integer> weights = Ranked.weights(reasons);
        int most = causes.values().stream()
                .mapToInt(cause -> weights.getOrDefault(cause, 0))
                .max()
                .orElse(0);
        return most > 0 && weights.getOrDefault(fault, 0) == most;
    }

    /** Whether any cause is left for the signs that were seen. */
    static Set<CausesFound> causesLeft(Situation situation) {
        Optional<Decision<Fault>> causes = situation.decision(Topics.CAUSES, Subject.FLOOR);
        if (causes.filter(decision -> !decision.values().isEmpty()).isPresent()) {
            return EnumSet.of(CausesFound.NAMED);
        }
        boolean signs = !situation.log().orElseThrow().signs().isEmpty();
        return EnumSet.of(signs ? CausesFound.NONE_LEFT : CausesFound.NO_SIGN);
    }
}
