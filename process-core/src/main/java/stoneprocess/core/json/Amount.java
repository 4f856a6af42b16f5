package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;

/**
 * What is a number with a unit: printed alone as {@code {"value": 2.5, "unit": "mm"}} and as a range as {@code {"low":
 * 2, "high": 3, "unit": "mm"}}. Any unit of the dimension is read; the kept one is printed.
 *
 * @param name what its definition in a schema is called
 * @param type the class of the values: a quantity, a change of gloss or a whole number
 * @param units the units that are read, the kept one first; none for a number without a unit
 */
record Amount(String name, Class<?> type, List<Unit> units) {
    /** A quantity whose dimension is told by its unit. */
    static final Amount ANY_QUANTITY = new Amount("quantity", Quantity.class, List.of(Unit.values()));

    private static final String UNIT = "unit";

    /** The quantities of one dimension. */
    static Amount of(Dimension dimension) {
        return new Amount(dimension.key(), Quantity.class, Unit.of(dimension));
    }

    /** The values of one class. */
    static Amount of(Class<?> type) {
        if (type == Integer.class) {
            return new Amount("whole", type, List.of());
        }
        if (type == GlossChange.class) {
            return new Amount("gloss-change", type, Unit.of(Dimension.GLOSS));
        }
        return type == Quantity.class ? ANY_QUANTITY : of(Dimension.of(type));
    }

    /** One value. */
    Shape alone() {
        return shape(name, List.of("value"), List::of, numbers -> numbers.get(0));
    }

    /** Two values with the lower first. */
    Shape range() {
        return shape(
                name + "-range",
                List.of("low", "high"),
                range -> List.of(((Range<?>) range).low(), ((Range<?>) range).high()),
                Amount::range);
    }

    /** Three values, the likely one between. */
    Shape spread() {
        return shape(
                name + "-spread",
                List.of("low", "likely", "high"),
                spread ->
                        List.of(((Spread<?>) spread).low(), ((Spread<?>) spread).likely(), ((Spread<?>) spread).high()),
                Amount::spread);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object spread(List<Object> figures) {
        return new Spread((Comparable) figures.get(0), (Comparable) figures.get(1), (Comparable) figures.get(2));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object range(List<Object> ends) {
        return Range.of((Comparable) ends.get(0), (Comparable) ends.get(1));
    }

    private Shape shape(
            String definition,
            List<String> numbers,
            Function<Object, List<Object>> split,
            Function<List<Object>, Object> join) {
        List<String> fields = new ArrayList<>(numbers);
        if (!units.isEmpty()) {
            fields.add(UNIT);
        }
        return Shape.of(
                (value, grades) -> {
                    Map<String, Object> printed = new LinkedHashMap<>();
                    List<Object> values = split.apply(value);
                    for (int i = 0; i < values.size(); i++) {
                        printed.put(numbers.get(i), number(values.get(i)));
                    }
                    if (!units.isEmpty()) {
                        printed.put(UNIT, printed(values.get(0)).symbol());
                    }
                    return printed;
                },
                node -> {
                    Unit unit = unit(node.objectLike(example(numbers)).only(fields));
                    List<Object> values = numbers.stream()
                            .map(part -> value(node.get(part), unit))
                            .toList();
                    return node.checked(() -> join.apply(values));
                },
                definitions -> definitions.refer(definition, definition, definition, () -> schema(numbers, fields)));
    }

    /** Numbers that any dimension takes, with the first of the units. */
    private String example(List<String> numbers) {
        List<String> fields = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            fields.add("\"" + numbers.get(i) + "\": " + (2 + i));
        }
        units.stream().limit(1).forEach(unit -> fields.add("\"" + UNIT + "\": \"" + unit.symbol() + "\""));
        return "{" + String.join(", ", fields) + "}";
    }

    private static Object number(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.decimal();
        }
        return value instanceof GlossChange change
                ? BigDecimal.valueOf(change.glossUnits()).stripTrailingZeros()
                : value;
    }

    private Unit printed(Object value) {
        return value instanceof Quantity quantity ? quantity.dimension().unit() : units.get(0);
    }

    private Unit unit(Node node) {
        if (units.isEmpty()) {
            return Unit.COUNT;
        }
        Node symbol = node.get(UNIT);
        String read = symbol.text();
        return units.stream()
                .filter(unit -> unit.symbol().equals(read))
                .findFirst()
                .orElseThrow(() -> symbol.refused("one of " + String.join(", ", symbols())));
    }

    private List<String> symbols() {
        return units.stream().map(Unit::symbol).toList();
    }

    private Object value(Node node, Unit unit) {
        if (type == Integer.class) {
            return node.integer();
        }
        BigDecimal number = node.number();
        return node.checked(
                () -> type == GlossChange.class ? new GlossChange(number.doubleValue()) : Quantity.read(number, unit));
    }

    private Map<String, Object> schema(List<String> numbers, List<String> fields) {
        Map<String, Object> number = Shape.object("type", type == Integer.class ? "integer" : "number");
        if (type != GlossChange.class
                && units.stream().allMatch(unit -> unit.dimension().least() == 0)) {
            number.put("minimum", 0);
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        numbers.forEach(part -> properties.put(part, number));
        if (!units.isEmpty()) {
            properties.put(UNIT, Shape.object("enum", symbols()));
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        if (!units.isEmpty() && !equals(ANY_QUANTITY)) {
            schema.put("description", "Printed in " + symbols().get(0) + "; any of the units is read.");
        }
        schema.putAll(Leaves.objectSchema(properties, fields));
        return schema;
    }
}
