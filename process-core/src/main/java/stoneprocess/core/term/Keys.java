package stoneprocess.core.term;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Keys are asked for in every decision record, so each is made once. */
final class Keys {
    private static final Map<Term, String> OTHERS = new ConcurrentHashMap<>();
    private static final ClassValue<String[]> OF_ENUM = new ClassValue<>() {
        @Override
        protected String[] computeValue(Class<?> type) {
            Object[] constants = type.getEnumConstants();
            String[] keys = new String[constants.length];
            for (int i = 0; i < keys.length; i++) {
                keys[i] = Term.keyOf(((Enum<?>) constants[i]).name());
            }
            return keys;
        }
    };

    private Keys() {}

    static String of(Term term) {
        return term instanceof Enum<?> constant
                ? OF_ENUM.get(constant.getDeclaringClass())[constant.ordinal()]
                : OTHERS.computeIfAbsent(term, constant -> Term.keyOf(constant.name()));
    }
}
