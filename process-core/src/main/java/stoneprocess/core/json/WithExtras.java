package stoneprocess.core.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import stoneprocess.core.internal.check.Refuse;

/**
 * A value with the fields of the user's own that stand beside its fields in JSON. A survey and a job log hold their own
 * themselves.
 *
 * @param value the value
 * @param extras by their path, such as {@code x-job} or {@code prices.x-old}, their value as JSON
 * @param <T> the type of the value
 */
public record WithExtras<T>(T value, Map<String, String> extras) {
    /** Copies the map and keeps its order. */
    public WithExtras {
        Refuse.nulls(WithExtras.class, value, extras);
        extras = Collections.unmodifiableMap(new LinkedHashMap<>(extras));
    }
}
