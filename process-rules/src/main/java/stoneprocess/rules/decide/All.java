package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/** Every value asked for stands, unless vetoed; a need asks for its values and leaves the others alone. */
public final class All implements Policy {
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated) {
        Set<Term> asked = new HashSet<>();
        Set<Term> excluded = new HashSet<>();
        for (Stated each : stated) {
            (asks(each.kind()) ? asked : excluded).addAll(each.contribution().values());
        }
        asked.removeAll(excluded);
        List<V> stand = new ArrayList<>(topic.domain());
        stand.retainAll(asked);
        List<Reason> won = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Stated each : stated) {
            boolean lost = asks(each.kind())
                    && excluded.containsAll(each.contribution().values());
            (lost ? vetoed : won).add(each.reason());
        }
        return new Decision<>(topic, subject, stand, won, List.of(), vetoed, List.of());
    }

    @Override
    public boolean needsNarrow() {
        return false;
    }

    @Override
    public boolean isSingle() {
        return false;
    }

    @Override
    public boolean asks(ContributionKind kind) {
        return kind != ContributionKind.VETO;
    }

    @Override
    public boolean mustBeAsked(Choice<?> topic, Term value) {
        return true;
    }

    @Override
    public boolean mayHelp(Choice<?> topic, Set<Term> named, Term value) {
        return named.contains(value);
    }
}
