package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * What only one of two recommendations has.
 *
 * @param one what only the one has, in its order
 * @param other what only the other has, in its order
 * @param <T> what is compared
 */
public record Split<T>(List<T> one, List<T> other) {
    public Split {
        Refuse.nulls(Split.class, one, other);
        one = List.copyOf(one);
        other = List.copyOf(other);
    }

    /** What each list has and the other lacks. */
    public static <T> Split<T> of(List<T> one, List<T> other) {
        return new Split<>(
                one.stream().filter(member -> !other.contains(member)).toList(),
                other.stream().filter(member -> !one.contains(member)).toList());
    }

    public boolean isEmpty() {
        return one.isEmpty() && other.isEmpty();
    }
}
