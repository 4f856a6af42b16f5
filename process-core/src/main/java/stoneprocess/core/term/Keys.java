package stoneprocess.core.term;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Keys are asked for in every decision record, so each is made once. */
final class Keys {
    private static final Map<Term, String> KEYS = new ConcurrentHashMap<>();

    private Keys() {}

    static String of(Term term) {
        // Looking first takes no lock.
        String key = KEYS.get(term);
        return key == null ? KEYS.computeIfAbsent(term, made -> Term.keyOf(made.name())) : key;
    }
}
