package stoneprocess.core.json;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.tool.GritSequence;

/** What was read so far of the record that encloses a value, and of those around it. */
final class Scope {
    private final @Nullable Scope outer;
    private final Map<String, Object> read = new HashMap<>();
    private final GritSequence sequence;
    private final Optional<Extras> extras;

    private Scope(@Nullable Scope outer, GritSequence sequence, Optional<Extras> extras) {
        this.outer = outer;
        this.sequence = sequence;
        this.extras = extras;
    }

    static Scope of(GritSequence sequence) {
        return new Scope(null, sequence, Optional.empty());
    }

    Scope inner() {
        return new Scope(this, sequence, extras);
    }

    Scope with(GritSequence other) {
        return new Scope(this, other, extras);
    }

    Scope with(Extras collector) {
        return new Scope(this, sequence, Optional.of(collector));
    }

    void put(String component, Object value) {
        read.put(component, value);
    }

    /** The component of that name, of the nearest record that has it. */
    Object find(String component) {
        for (Scope scope = this; scope != null; scope = scope.outer) {
            Object value = scope.read.get(component);
            if (value != null) {
                return value;
            }
        }
        throw new IllegalStateException("Nothing around this value has read a component " + component);
    }

    /** The sequence whose grades are meant. */
    GritSequence sequence() {
        return sequence;
    }

    /** Where fields of the user's own are kept; empty where they are ignored. */
    Optional<Extras> extras() {
        return extras;
    }
}
