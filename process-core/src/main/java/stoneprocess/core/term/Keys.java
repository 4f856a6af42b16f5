package stoneprocess.core.term;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Keys are asked for in every decision record, so each is made once. */
final class Keys {
    private static final Map<Term, String> KEYS = new ConcurrentHashMap<>();

    private Keys() {}

    static String of(Term term) {
        return KEYS.computeIfAbsent(term, made -> Term.keyOf(made.name()));
    }
}
