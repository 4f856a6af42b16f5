package stoneprocess.core.stone;

import java.util.Set;
import stoneprocess.core.source.Citation;

/**
 * A name under which floors are sold or described.
 *
 * @param name the name, as a key
 * @param families the families that the name covers in practice
 * @param source where that comes from
 */
public record Stone(String name, Set<Family> families, Citation source) {
    public Stone {
        families = Set.copyOf(families);
    }
}
