package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/** Every value that is suggested and not vetoed, those suggested oftener and ranked higher first. */
public final class Ranked implements Policy {
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated) {
        Map<Term, Integer> weights = weights(stated.stream().map(Stated::reason).toList());
        List<V> stand = Allowed.of(topic, stated).stream()
                .filter(value -> weights.containsKey(value))
                .sorted(Comparator.comparing(value -> -weights.get(value)))
                .toList();
        List<Reason> won = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Stated each : stated) {
            boolean lost =
                    each.isWish() && each.contribution().values().stream().noneMatch(stand::contains);
            (lost ? vetoed : won).add(each.reason());
        }
        return new Decision<>(topic, subject, stand, won, List.of(), vetoed, List.of());
    }

    /**
     * How much speaks for each value: what each suggestion weighs, added up.
     *
     * @param reasons of which the wishes suggest
     */
    public static Map<Term, Integer> weights(List<Reason> reasons) {
        Map<Term, Integer> weights = new LinkedHashMap<>();
        for (Reason reason : reasons) {
            if (reason.kind() == ContributionKind.WISH) {
                for (int rank = 0; rank < reason.values().size(); rank++) {
                    weights.merge(
                            reason.values().get(rank),
                            weight(rank, reason.facts().size()),
                            Integer::sum);
                }
            }
        }
        return weights;
    }

    /**
     * What one suggestion weighs: three for a first rank, two for a second, one for others, times the number of facts
     * that the rule rests on, so that what two facts bear out counts twice.
     */
    public static int weight(int rank, int facts) {
        return Math.max(1, 3 - rank) * facts;
    }

    @Override
    public boolean isSingle() {
        return false;
    }

    /** Where nothing is left, nothing is suggested. */
    @Override
    public boolean hasImpasse() {
        return false;
    }

    /** Other suggestions decide on the order. */
    @Override
    public boolean isLocal() {
        return false;
    }
}
