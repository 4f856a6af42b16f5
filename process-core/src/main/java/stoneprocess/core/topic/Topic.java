package stoneprocess.core.topic;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * One question that a program decides. A {@link Choice} is made among words by what rules contribute; a {@link Derived}
 * topic follows from a formula over other topics.
 *
 * @param <V> the values it may take
 */
public sealed interface Topic<V> permits Choice, Derived {
    /** Stable key. */
    String id();

    /** When it is decided. */
    Stage stage();

    /** What it is decided for. */
    Scope scope();

    /** How what is known becomes an outcome. */
    PolicyKind policy();

    /** The words that may be chosen, in their order; none where the value is derived. */
    List<? extends Term> domain();

    /** True when the domain runs from the most cautious to the boldest value. */
    boolean isCautiousFirst();

    /** True when there is no plan without it: an impasse ends the planning. */
    boolean isBlocking();

    /** What a value counts as when it rests on an unknown fact. */
    Optional<? extends Term> whenUncertain();

    /** The stable keys of values, as JSON and texts name them. */
    List<String> keys(List<? extends V> values);

    /**
     * The values with the given keys, as {@link #keys} gives them.
     *
     * @param field what the keys are called in an error
     * @throws InvalidInputException for keys that name no value
     */
    List<V> parse(List<String> keys, String field);
}
