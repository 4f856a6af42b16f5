package stoneprocess.core.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;

/** An object of a JSON tree under construction, its fields in the order in which they are put. */
final class Fields {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    Fields put(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    Fields putIf(String name, Optional<?> value) {
        value.ifPresent(present -> fields.put(name, present));
        return this;
    }

    boolean isEmpty() {
        return fields.isEmpty();
    }

    Map<String, Object> tree() {
        return fields;
    }

    static <T> List<Object> list(List<T> members, Function<T, Object> print) {
        return members.stream().map(print).toList();
    }

    static Map<String, Object> quantity(Quantity quantity) {
        return new Fields()
                .put("value", quantity.decimal())
                .put("unit", quantity.dimension().unit().symbol())
                .tree();
    }

    static Map<String, Object> passes(Range<Integer> passes) {
        return new Fields().put("low", passes.low()).put("high", passes.high()).tree();
    }

    static Map<String, Object> range(Range<? extends Quantity> range) {
        return new Fields()
                .put("low", range.low().decimal())
                .put("high", range.high().decimal())
                .put("unit", range.low().dimension().unit().symbol())
                .tree();
    }
}
