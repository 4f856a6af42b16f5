package stoneprocess.core.json;

import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import stoneprocess.core.decision.Input;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.Moment;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/** The walker: from a type to its shape. A record's shape is found from its components. */
final class Shapes {
    private static final Map<Class<?>, Shape> KNOWN = new HashMap<>();
    private static final Map<Typed, Shape> FOUND = new ConcurrentHashMap<>();

    static {
        KNOWN.put(String.class, Leaves.TEXT);
        KNOWN.put(boolean.class, Leaves.FLAG);
        KNOWN.put(int.class, Leaves.COUNT);
        KNOWN.put(double.class, Leaves.NUMBER);
        KNOWN.put(BigDecimal.class, Leaves.DECIMAL);
        KNOWN.put(BigInteger.class, Leaves.DIGITS);
        KNOWN.put(Subject.class, Leaves.SUBJECT);
        KNOWN.put(Moment.class, Leaves.MOMENT);
        KNOWN.put(AbrasiveGrade.class, Leaves.GRADE_KEY);
        KNOWN.put(Topic.class, Leaves.TOPIC);
        KNOWN.put(Input.class, Leaves.INPUT);
        KNOWN.put(SurveyField.class, Leaves.FIELD);
        KNOWN.put(GlossChange.class, Amount.of(GlossChange.class).alone());
        KNOWN.put(GritSequence.class, sequence());
        KNOWN.put(Parameters.class, parameters());
        KNOWN.put(FloorSurvey.class, new SurveyShape());
        KNOWN.put(Entry.class, new EntryShape());
    }

    private Shapes() {}

    static Shape of(Type type) {
        return of(Typed.of(Object.class).resolve(type));
    }

    static Shape of(Typed type) {
        Shape known = KNOWN.get(type.raw());
        if (known != null) {
            return known;
        }
        Shape found = FOUND.get(type);
        if (found == null) {
            found = find(type);
            FOUND.put(type, found);
        }
        return found;
    }

    private static Shape find(Typed type) {
        Class<?> raw = type.raw();
        if (raw.isEnum() && Term.class.isAssignableFrom(raw)) {
            return Leaves.term(type);
        }
        if (Quantity.class.isAssignableFrom(raw)) {
            return Amount.of(raw).alone();
        }
        if (raw == Range.class) {
            return Amount.of(type.argument(0).raw()).range();
        }
        if (raw == Spread.class && type.argument(0).raw() != Money.class) {
            return Amount.of(type.argument(0).raw()).spread();
        }
        if (raw == List.class || raw == Set.class) {
            boolean words = type.argument(0).raw().isEnum();
            return list(of(type.argument(0)), words, raw == Set.class);
        }
        if (raw == Map.class) {
            return map(of(type.argument(0)), of(type.argument(1)));
        }
        if (raw.isSealed()) {
            return new UnionShape(type);
        }
        if (raw.isRecord()) {
            return new RecordShape(type);
        }
        throw new IllegalArgumentException(raw + " has no JSON form");
    }

    static Shape list(Shape member) {
        return list(member, false, false);
    }

    /** Words stand at most once in a list, the members of a set anyway. */
    private static Shape list(Shape member, boolean words, boolean set) {
        return Shape.of(
                (values, grades) -> {
                    List<Object> printed = new ArrayList<>(((Collection<?>) values).size());
                    for (Object value : (Collection<?>) values) {
                        printed.add(member.print(value, grades));
                    }
                    return printed;
                },
                node -> {
                    Collection<Object> values = set ? new LinkedHashSet<>() : new ArrayList<>();
                    Set<Object> seen = new LinkedHashSet<>();
                    for (Node each : node.array()) {
                        Object value = member.read(each);
                        if ((words || set) && !seen.add(value)) {
                            throw each.refused("each value once");
                        }
                        values.add(value);
                    }
                    return values;
                },
                definitions -> {
                    Map<String, Object> schema = Shape.object("type", "array", "items", member.schema(definitions));
                    if (words || set) {
                        schema.put("uniqueItems", true);
                    }
                    return schema;
                });
    }

    /** An object whose field names are the map's keys. */
    private static Shape map(Shape key, Shape value) {
        return Shape.of(
                (values, grades) -> {
                    Map<String, Object> printed = new LinkedHashMap<>();
                    ((Map<?, ?>) values)
                            .forEach((name, member) ->
                                    printed.put((String) key.print(name, grades), value.print(member, grades)));
                    return printed;
                },
                node -> {
                    List<String> names = node.object().keySet().stream()
                            .filter(name -> !name.startsWith(Extras.PREFIX))
                            .toList();
                    node.only(names);
                    Map<Object, Object> values = new LinkedHashMap<>();
                    for (String name : names) {
                        Node member = node.get(name);
                        values.put(key.read(new Node(member.path(), name, member.scope())), value.read(member));
                    }
                    return values;
                },
                definitions -> Shape.object(
                        "type",
                        "object",
                        "propertyNames",
                        Shape.object(
                                "anyOf",
                                List.of(key.schema(definitions), Shape.object("pattern", "^" + Extras.PREFIX))),
                        "patternProperties",
                        Shape.object("^" + Extras.PREFIX, true),
                        "additionalProperties",
                        value.schema(definitions)));
    }

    private static Shape sequence() {
        Shape grades = list(new RecordShape(Typed.of(AbrasiveGrade.class)));
        return Shape.of(
                (sequence, any) -> grades.print(((GritSequence) sequence).grades(), any),
                node -> {
                    List<AbrasiveGrade> listed = ((List<?>) grades.read(node))
                            .stream().map(AbrasiveGrade.class::cast).toList();
                    return node.checked(() -> GritSequence.of(listed));
                },
                grades::schema);
    }

    /** Every parameter has to stand there: a number that is missing is never taken from the shipped set. */
    private static Shape parameters() {
        Shape quantity = Amount.ANY_QUANTITY.alone();
        return Shape.of(
                (parameters, grades) -> {
                    Map<String, Object> printed = new LinkedHashMap<>();
                    ((Parameters) parameters)
                            .all()
                            .forEach(parameter ->
                                    printed.put(parameter.name(), quantity.print(parameter.value(), grades)));
                    return printed;
                },
                Shapes::parameters,
                definitions -> Shape.object("type", "object", "additionalProperties", quantity.schema(definitions)));
    }

    private static Parameters parameters(Node node) {
        List<String> names =
                Parameters.standard().all().stream().map(Parameter::name).toList();
        node.only(names);
        Parameters parameters = Parameters.standard();
        for (String name : names) {
            Node value = node.get(name);
            Parameters before = parameters;
            Dimension dimension = parameters.parameter(name).value().dimension();
            Quantity number = (Quantity) Amount.of(dimension).alone().read(value);
            parameters = value.checked(() -> before.with(name, number));
        }
        return node.checkedParts(names, parameters::requireRanges);
    }
}
