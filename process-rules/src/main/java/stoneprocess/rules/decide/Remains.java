package stoneprocess.rules.decide;

import java.util.List;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/** Every value that all needs allow and no veto excludes. */
public final class Remains implements Policy {
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated) {
        List<V> allowed = Allowed.of(topic, stated);
        if (allowed.isEmpty()) {
            return Allowed.impasse(topic, subject, stated);
        }
        List<Reason> won = stated.stream()
                .filter(each -> !each.isWish())
                .map(Stated::reason)
                .toList();
        List<Reason> outweighed = Allowed.reasons(stated, ContributionKind.WISH);
        return new Decision<>(topic, subject, allowed, won, outweighed, List.of(), List.of());
    }

    @Override
    public boolean isSingle() {
        return false;
    }
}
