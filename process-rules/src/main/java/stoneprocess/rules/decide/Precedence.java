package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/** The value asked for that comes first in the domain; the last value when nothing is asked for. */
public final class Precedence implements Policy {
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated) {
        List<V> domain = topic.domain();
        int first = domain.size() - 1;
        for (Stated each : stated) {
            first = Math.min(first, place(topic, each.reason()));
        }
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        for (Stated each : stated) {
            (place(topic, each.reason()) == first ? won : outweighed).add(each.reason());
        }
        return new Decision<>(topic, subject, List.of(domain.get(first)), won, outweighed, List.of(), List.of());
    }

    private static int place(Choice<?> topic, Reason reason) {
        return topic.domain().indexOf(asked(topic, reason.values().get(0), reason.certain()));
    }

    /**
     * What counts as asked for: the value itself, or the stand-in when it rests on an unknown fact.
     *
     * @param first the value that is named first
     * @param certain whether all facts behind it are known
     */
    public static Term asked(Choice<?> topic, Term first, boolean certain) {
        Objects.requireNonNull(first, "first");
        return certain ? first : topic.whenUncertain().map(Term.class::cast).orElse(first);
    }

    /** No need narrows: each asks for its first value. */
    @Override
    public boolean needsNarrow() {
        return false;
    }

    @Override
    public boolean isSingle() {
        return true;
    }

    /** What is asked for earlier in the domain keeps out all that comes later. */
    @Override
    public boolean excludes(Choice<?> topic, Reason reason, Term value) {
        return place(topic, reason) < topic.domain().indexOf(value);
    }

    @Override
    public boolean asks(ContributionKind kind) {
        return kind != ContributionKind.VETO;
    }

    /** The last value stands where nothing is asked for. */
    @Override
    public boolean mustBeAsked(Choice<?> topic, Term value) {
        return topic.domain().indexOf(value) < topic.domain().size() - 1;
    }

    @Override
    public boolean mayHelp(Choice<?> topic, Set<Term> named, Term value) {
        return named.contains(value) || topic.whenUncertain().equals(Optional.of(value));
    }
}
