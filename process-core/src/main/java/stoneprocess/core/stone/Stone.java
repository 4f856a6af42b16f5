package stoneprocess.core.stone;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;

/**
 * A name under which floors are sold or described.
 *
 * @param name the name, as a key
 * @param families the families that the name covers in practice, at least one, in the order of {@link Family}
 * @param source where that comes from
 */
public record Stone(String name, Set<Family> families, Citation source) {
    public Stone {
        Refuse.nulls(Stone.class, name, families, source);
        if (families.isEmpty()) {
            throw new InvalidInputException(name + ".families", "none", "at least one family");
        }
        families = Collections.unmodifiableSet(EnumSet.copyOf(families));
    }
}
