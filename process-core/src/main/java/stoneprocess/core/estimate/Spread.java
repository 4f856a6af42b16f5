package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;

/**
 * One estimated value as three figures. Low and high are the ends of common practice, not of a confidence interval.
 *
 * @param low what is reached when everything goes well, or the lower end of an amount
 * @param likely what to plan with, not below low
 * @param high the upper end, not below likely
 * @param <T> what is estimated
 */
public record Spread<T extends Comparable<? super T>>(T low, T likely, T high) {
    public Spread {
        Refuse.nulls(Spread.class, low, likely, high);
        if (low.compareTo(likely) > 0 || likely.compareTo(high) > 0) {
            throw new InvalidInputException(
                    "spread",
                    text(low) + ", " + text(likely) + ", " + text(high),
                    "three figures that do not fall from low over likely to high");
        }
    }

    /** Three figures, in rising order; another order is refused. */
    public static <T extends Comparable<? super T>> Spread<T> of(T low, T likely, T high) {
        return new Spread<>(low, likely, high);
    }

    private static String text(Object figure) {
        return figure instanceof Quantity quantity ? quantity.print() : String.valueOf(figure);
    }

    T at(Case which) {
        return switch (which) {
            case LOW -> low;
            case LIKELY -> likely;
            case HIGH -> high;
        };
    }
}
