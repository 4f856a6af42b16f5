package stoneprocess.core.internal.check;

import java.util.stream.Stream;

/** Refusals that a record's constructor begins with. */
public final class Refuse {
    private Refuse() {}

    /**
     * Refuses null among a record's components.
     *
     * @param type the record
     * @param components all its components but the primitive ones, in their order
     * @throws NullPointerException naming the first component that is null
     */
    public static void nulls(Class<? extends Record> type, Object... components) {
        for (int i = 0; i < components.length; i++) {
            if (components[i] == null) {
                throw new NullPointerException(Stream.of(type.getRecordComponents())
                        .filter(component -> !component.getType().isPrimitive())
                        .toList()
                        .get(i)
                        .getName());
            }
        }
    }
}
