package stoneprocess.core.survey;

import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.internal.check.Refuse;

/**
 * The answer to one question of a survey. Unknown is an answer of its own; "none" is a known answer: somebody looked
 * and found none.
 *
 * @param <T> the type of a known answer
 */
public sealed interface Answer<T> {
    /** Somebody found out. */
    record Known<T>(T fact) implements Answer<T> {
        public Known {
            Refuse.nulls(Known.class, fact);
        }
    }

    /** Nobody has found out yet. */
    record Unknown<T>() implements Answer<T> {}

    static <T> Answer<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Answer<T> unknown() {
        return new Unknown<>();
    }

    /** The value if it is known. */
    default Optional<T> value() {
        return this instanceof Known<T> known ? Optional.of(known.fact()) : Optional.empty();
    }

    default boolean isKnown() {
        return this instanceof Known<T>;
    }

    /** Applies a function to a known value; unknown stays unknown. */
    default <R> Answer<R> map(Function<? super T, ? extends R> function) {
        return this instanceof Known<T> known ? known(function.apply(known.fact())) : unknown();
    }
}
