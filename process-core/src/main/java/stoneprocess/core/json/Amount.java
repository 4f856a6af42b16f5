package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
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
 * @param numberSchema the JSON schema of the number
 * @param units symbols of the units that are read; none for a number without a unit
 * @param unit reads the unit of an object
 * @param number from the value to what is printed as its number
 * @param symbol from the value to the unit that it is printed in
 * @param make from the number and the unit to the value
 */
record Amount(
        String name,
        Map<String, Object> numberSchema,
        List<String> units,
        Function<Node, Unit> unit,
        Function<Object, Object> number,
        Function<Object, String> symbol,
        BiFunction<Node, Unit, Object> make) {
    private static final Map<String, Object> NOT_NEGATIVE = Shape.object("type", "number", "minimum", 0);
    private static final String UNIT = "unit";

    /** A quantity whose dimension is told by its unit. */
    static final Amount ANY_QUANTITY = new Amount(
            "quantity",
            NOT_NEGATIVE,
            Arrays.stream(Unit.values()).map(Unit::symbol).toList(),
            Amount::anyUnit,
            Amount::decimal,
            Amount::symbolOf,
            Node::quantity);

    /** Unlike a gloss, a change of gloss may be negative. */
    static final Amount GLOSS_CHANGE = new Amount(
            "gloss-change",
            Shape.object("type", "number"),
            Unit.symbols(Dimension.GLOSS),
            node -> unit(node, Dimension.GLOSS),
            change -> BigDecimal.valueOf(((GlossChange) change).glossUnits()).stripTrailingZeros(),
            change -> Unit.GLOSS_UNIT.symbol(),
            (node, unit) -> change(node));

    static final Amount WHOLE = new Amount(
            "whole",
            Shape.object("type", "integer", "minimum", 0),
            List.of(),
            node -> Unit.COUNT,
            number -> number,
            number -> Unit.COUNT.symbol(),
            (node, unit) -> node.integer());

    /** The quantities of one dimension. */
    static Amount of(Dimension dimension) {
        return new Amount(
                dimension.key(),
                NOT_NEGATIVE,
                Unit.symbols(dimension),
                node -> unit(node, dimension),
                Amount::decimal,
                Amount::symbolOf,
                Node::quantity);
    }

    /** The values of one class, or of any quantity. */
    static Amount of(Class<?> type) {
        if (type == Integer.class) {
            return WHOLE;
        }
        if (type == GlossChange.class) {
            return GLOSS_CHANGE;
        }
        return type == Quantity.class
                ? ANY_QUANTITY
                : kept().filter(unit -> Quantity.of(BigDecimal.ONE, unit).getClass() == type)
                        .findFirst()
                        .map(unit -> of(unit.dimension()))
                        .orElseThrow(() -> new IllegalArgumentException(type + " is no quantity"));
    }

    private static Stream<Unit> kept() {
        return Arrays.stream(Dimension.values()).map(Dimension::unit);
    }

    private static Object decimal(Object quantity) {
        return ((Quantity) quantity).decimal();
    }

    private static String symbolOf(Object quantity) {
        return ((Quantity) quantity).dimension().unit().symbol();
    }

    private static Unit unit(Node node, Dimension dimension) {
        return Unit.parse(dimension, node.get(UNIT).text(), node.path());
    }

    private static Unit anyUnit(Node node) {
        Node symbol = node.get(UNIT);
        return Arrays.stream(Unit.values())
                .filter(unit -> symbol.isText(unit.symbol()))
                .findFirst()
                .orElseThrow(() -> symbol.refused("one of " + String.join(", ", ANY_QUANTITY.units)));
    }

    private static GlossChange change(Node node) {
        double amount = node.number().doubleValue();
        return node.checked(() -> new GlossChange(amount));
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
                        printed.put(numbers.get(i), number.apply(values.get(i)));
                    }
                    if (!units.isEmpty()) {
                        printed.put(UNIT, symbol.apply(values.get(0)));
                    }
                    return printed;
                },
                node -> {
                    Unit read = unit.apply(node.only(fields));
                    List<Object> values = numbers.stream()
                            .map(part -> make.apply(node.get(part), read))
                            .toList();
                    return node.checked(() -> join.apply(values));
                },
                definitions -> definitions.refer(definition, definition, definition, () -> schema(numbers, fields)));
    }

    private Map<String, Object> schema(List<String> numbers, List<String> fields) {
        Map<String, Object> properties = new LinkedHashMap<>();
        numbers.forEach(part -> properties.put(part, numberSchema));
        if (!units.isEmpty()) {
            properties.put(UNIT, Shape.object("enum", units));
        }
        return Leaves.objectSchema(properties, fields);
    }
}
