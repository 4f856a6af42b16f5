package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.Comparator;
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
        V value = stated.stream()
                .map(each -> asked(topic, each.reason()))
                .min(Comparator.comparing(domain::indexOf))
                .orElse(domain.get(domain.size() - 1));
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        for (Stated each : stated) {
            (asked(topic, each.reason()).equals(value) ? won : outweighed).add(each.reason());
        }
        return new Decision<>(topic, subject, List.of(value), won, outweighed, List.of(), List.of());
    }

    /** What a reason asks for: its first value, or the stand-in when it rests on an unknown fact. */
    private static <V extends Term> V asked(Choice<V> topic, Reason reason) {
        return asked(topic, topic.value(reason.values().get(0)), reason.certain());
    }

    /**
     * What counts as asked for.
     *
     * @param first the value that is named first
     * @param certain whether all facts behind it are known
     */
    public static <V extends Term> V asked(Choice<V> topic, V first, boolean certain) {
        Objects.requireNonNull(first, "first");
        return certain ? first : topic.whenUncertain().orElse(first);
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
    public boolean excludes(Choice<?> topic, Reason reason, String value) {
        return comesBefore(topic, reason, value);
    }

    private static <V extends Term> boolean comesBefore(Choice<V> topic, Reason reason, String value) {
        return topic.domain().indexOf(asked(topic, reason)) < topic.domain().indexOf(topic.value(value));
    }

    @Override
    public boolean asks(ContributionKind kind) {
        return kind != ContributionKind.VETO;
    }

    @Override
    public boolean mayHelp(Choice<?> topic, Set<String> named, String value) {
        return named.contains(value) || topic.whenUncertain().map(Term::key).equals(Optional.of(value));
    }
}
