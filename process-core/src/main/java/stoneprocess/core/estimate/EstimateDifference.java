package stoneprocess.core.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.term.Term;

/**
 * One line of two options side by side.
 *
 * @param line name of the line
 * @param first figures of the first option; empty when it has no such line
 * @param second figures of the second option; empty when it has no such line
 * @param direction whether the second takes more or less, by the likely figures; a missing line counts as none
 * @param by how far the likely figures lie apart
 * @param <T> what is compared
 */
public record EstimateDifference<T extends Comparable<? super T>>(
        String line, Optional<Spread<T>> first, Optional<Spread<T>> second, Direction direction, T by) {
    public EstimateDifference {
        Refuse.nulls(EstimateDifference.class, line, first, second, direction, by);
    }

    /** What the second option takes against the first. */
    public enum Direction implements Term {
        LESS,
        SAME,
        MORE
    }

    private static <T extends Comparable<? super T>> EstimateDifference<T> of(
            String line, Optional<Spread<T>> first, Optional<Spread<T>> second, BinaryOperator<T> apart) {
        T some = first.or(() -> second).orElseThrow().likely();
        T none = apart.apply(some, some);
        T firstLikely = first.map(Spread::likely).orElse(none);
        T secondLikely = second.map(Spread::likely).orElse(none);
        int order = secondLikely.compareTo(firstLikely);
        Direction direction = order < 0 ? Direction.LESS : order > 0 ? Direction.MORE : Direction.SAME;
        return new EstimateDifference<>(line, first, second, direction, apart.apply(firstLikely, secondLikely));
    }

    static <T extends Comparable<? super T>> EstimateDifference<T> ofBoth(
            String line, Spread<T> first, Spread<T> second, BinaryOperator<T> apart) {
        return of(line, Optional.of(first), Optional.of(second), apart);
    }

    /** The lines of the first in order, then those that only the second has. */
    static <T extends Comparable<? super T>> List<EstimateDifference<T>> ofLines(
            Map<String, Spread<T>> first, Map<String, Spread<T>> second, BinaryOperator<T> apart) {
        Set<String> names = new LinkedHashSet<>(first.keySet());
        names.addAll(second.keySet());
        List<EstimateDifference<T>> differences = new ArrayList<>();
        for (String name : names) {
            differences.add(
                    of(name, Optional.ofNullable(first.get(name)), Optional.ofNullable(second.get(name)), apart));
        }
        return differences;
    }

    /** How far two quantities of one dimension lie apart. */
    static Quantity apart(Quantity first, Quantity second) {
        BigDecimal by = first.decimal().subtract(second.decimal()).abs();
        return Quantity.of(by, first.dimension().unit());
    }

    static <T extends Quantity> BinaryOperator<T> apart(Class<T> type) {
        return (first, second) -> type.cast(apart(first, second));
    }
}
