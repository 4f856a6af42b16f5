package stoneprocess.rules.feature;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import stoneprocess.core.problem.InvalidInputException;

final class Classes {
    private Classes() {}

    static <E extends Enum<E>> Set<E> copy(Set<E> classes) {
        if (Objects.requireNonNull(classes, "mayBe").isEmpty()) {
            throw new InvalidInputException("mayBe", "no class", "at least one possible class");
        }
        return Collections.unmodifiableSet(EnumSet.copyOf(classes));
    }
}
