package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;

/**
 * How what rules state about a choice becomes one outcome: what excludes a value, what asks for it, and how it closes.
 * An outcome depends on the set of what was stated only, not on its order.
 */
public sealed interface Policy permits One, All, Precedence, Remains, Ranked, FewestChanges {
    /** The policy that a choice declares. */
    static Policy of(Choice<?> topic) {
        return Table.BY_KIND.get(topic.policy());
    }

    /** The policies by the name that the table of topics gives them. */
    final class Table {
        private static final Map<PolicyKind, Policy> BY_KIND = new EnumMap<>(Map.of(
                PolicyKind.ONE, new One(),
                PolicyKind.ALL, new All(),
                PolicyKind.PRECEDENCE, new Precedence(),
                PolicyKind.REMAINS, new Remains(),
                PolicyKind.RANKED, new Ranked(),
                PolicyKind.FEWEST_CHANGES, new FewestChanges()));

        private Table() {}
    }

    /** Closes a choice for one subject. */
    <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated);

    /**
     * Closes a choice for the subjects of a track in their order, or for one subject alone.
     *
     * @param about what was stated about a subject
     */
    default <V extends Term> List<Outcome> closeTrack(
            Choice<V> topic, List<Subject> subjects, Function<Subject, List<Stated>> about) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Subject subject : subjects) {
            outcomes.add(close(topic, subject, about.apply(subject)));
        }
        return outcomes;
    }

    /** True where a need takes away the values that it does not name, so that no value may be left. */
    default boolean needsNarrow() {
        return true;
    }

    /** True where it is an impasse when no value is left. */
    default boolean hasImpasse() {
        return needsNarrow();
    }

    /** True where one value is the outcome, false where several stand side by side. */
    boolean isSingle();

    /** True where nothing but what was stated about a subject tells what keeps a value out there. */
    default boolean isLocal() {
        return true;
    }

    /**
     * True for what keeps a value out as long as it is stated.
     *
     * @param kind need, wish or veto
     * @param named whether it names the value
     */
    default boolean excludes(ContributionKind kind, boolean named) {
        return kind == ContributionKind.VETO && named || kind == ContributionKind.NEED && !named && needsNarrow();
    }

    /** True for a reason that keeps a value out as long as it stands. */
    default boolean excludes(Choice<?> topic, Reason reason, Term value) {
        return excludes(reason.kind(), reason.values().contains(value));
    }

    /** True for what can make a value the outcome when it names it. */
    default boolean asks(ContributionKind kind) {
        return kind == ContributionKind.WISH;
    }

    /** True where a value is never the outcome unless a rule speaks that may help it. */
    default boolean mustBeAsked(Choice<?> topic, Term value) {
        return false;
    }

    /** True when a rule that names these values may help a value to be the outcome. */
    default boolean mayHelp(Choice<?> topic, Set<Term> named, Term value) {
        return true;
    }
}
