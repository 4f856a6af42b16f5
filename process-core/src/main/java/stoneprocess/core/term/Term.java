package stoneprocess.core.term;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A word of the trade. Implemented by enums; the key is what JSON, tables and text bundles call the constant and never
 * changes once released.
 */
public interface Term {
    String name();

    /** The constant's name in lower case with hyphens: {@code FELT_BY_NAIL} is {@code felt-by-nail}. */
    default String key() {
        return Keys.of(this);
    }

    /** The key for a constant of the given name. */
    static String keyOf(String constantName) {
        return constantName.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The constant of {@code type} with the given key.
     *
     * @throws InvalidInputException naming the field and the accepted keys
     */
    static <E extends Enum<E> & Term> E parse(Class<E> type, String key, String field) {
        for (E constant : type.getEnumConstants()) {
            if (constant.key().equals(key)) {
                return constant;
            }
        }
        throw new InvalidInputException(
                field, key, "one of " + String.join(", ", keys(Arrays.asList(type.getEnumConstants()))));
    }

    /** The keys of the given terms, in the order given. */
    static List<String> keys(Collection<? extends Term> terms) {
        String[] keys = new String[terms.size()];
        int at = 0;
        for (Term term : terms) {
            keys[at++] = term.key();
        }
        return List.of(keys);
    }
}
