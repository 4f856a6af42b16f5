package stoneprocess.core.internal.check;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where two values of the same kind first differ: a walk through records and lists in their order.
 *
 * @param path the components that lead there, for example {@code plan.tracks[0].steps[2].passes}
 * @param left what stands there on the one side
 * @param right what stands there on the other
 */
public record FirstDifference(String path, Object left, Object right) {
    /** Empty where both are equal. */
    public static Optional<FirstDifference> of(Object left, Object right) {
        return find("", left, right);
    }

    private static Optional<FirstDifference> find(String path, Object left, Object right) {
        if (Objects.equals(left, right)) {
            return Optional.empty();
        }
        if (left instanceof Optional<?> first
                && right instanceof Optional<?> second
                && first.isPresent()
                && second.isPresent()) {
            return find(path, first.get(), second.get());
        }
        if (left instanceof List<?> first && right instanceof List<?> second && first.size() == second.size()) {
            for (int i = 0; i < first.size(); i++) {
                Optional<FirstDifference> deeper = find(path + "[" + i + "]", first.get(i), second.get(i));
                if (deeper.isPresent()) {
                    return deeper;
                }
            }
        }
        if (left instanceof Record && left.getClass() == right.getClass()) {
            for (RecordComponent component : left.getClass().getRecordComponents()) {
                String name = path.isEmpty() ? component.getName() : path + "." + component.getName();
                Optional<FirstDifference> deeper = find(name, part(component, left), part(component, right));
                if (deeper.isPresent()) {
                    return deeper;
                }
            }
        }
        return Optional.of(new FirstDifference(path, left, right));
    }

    private static Object part(RecordComponent component, Object whole) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }
}
