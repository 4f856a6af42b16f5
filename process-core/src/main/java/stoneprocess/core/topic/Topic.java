package stoneprocess.core.topic;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * One question that a program decides. A {@link Choice} is made among words by what rules contribute; a {@link Derived}
 * topic follows from a formula over other topics.
 *
 * @param <V> the values it may take
 */
public abstract sealed class Topic<V> permits Choice, Derived {
    private final String id;
    private final Stage stage;
    private final Scope scope;
    private final PolicyKind policy;

    Topic(String id, Stage stage, Scope scope, PolicyKind policy) {
        this.id = Objects.requireNonNull(id, "id");
        this.stage = Objects.requireNonNull(stage, "stage");
        this.scope = Objects.requireNonNull(scope, "scope");
        this.policy = Objects.requireNonNull(policy, "policy");
    }

    /** Stable key. */
    public final String id() {
        return id;
    }

    /** When it is decided. */
    public final Stage stage() {
        return stage;
    }

    /** What it is decided for. */
    public final Scope scope() {
        return scope;
    }

    /** How what is known becomes an outcome. */
    public final PolicyKind policy() {
        return policy;
    }

    /** The words that may be chosen, in their order; none where the value is derived. */
    public abstract List<? extends Term> domain();

    /** True when the domain runs from the most cautious to the boldest value. */
    public abstract boolean isCautiousFirst();

    /** True when there is no plan without it: an impasse ends the planning. */
    public abstract boolean isBlocking();

    /** What a value counts as when it rests on an unknown fact. */
    public abstract Optional<? extends Term> whenUncertain();

    /** The stable keys of values, as JSON and texts name them. */
    public abstract List<String> keys(List<? extends V> values);

    /**
     * The values with the given keys, as {@link #keys} gives them.
     *
     * @param field what the keys are called in an error
     * @throws InvalidInputException for keys that name no value
     */
    public abstract List<V> parse(List<String> keys, String field);

    @Override
    public final String toString() {
        return id;
    }
}
