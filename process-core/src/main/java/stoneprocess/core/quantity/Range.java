package stoneprocess.core.quantity;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Two values with the lower first; both ends belong to it.
 *
 * @param low the lower end
 * @param high the upper end; may equal the lower
 * @param <T> what is ranged over
 */
public record Range<T extends Comparable<? super T>>(T low, T high) {
    public Range {
        Refuse.nulls(Range.class, low, high);
        if (low.compareTo(high) > 0) {
            throw new InvalidInputException(
                    "range", text(low) + " to " + text(high), "a lower end that is not above the upper end");
        }
    }

    public static <T extends Comparable<? super T>> Range<T> of(T low, T high) {
        return new Range<>(low, high);
    }

    private static String text(Object end) {
        return end instanceof Quantity quantity ? quantity.print() : String.valueOf(end);
    }

    public boolean contains(T value) {
        return low.compareTo(value) <= 0 && high.compareTo(value) >= 0;
    }
}
