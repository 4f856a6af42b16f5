package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.term.Term;

/** What was found in a zone, by kind of damage. */
final class DamagesShape implements Shape {
    private static final String KIND = "kind";
    private static final String NONE = "none";

    /** How bad it looks, in the words of the kind. */
    static final Shape LOOK = Shape.of(
            look -> ((Term) look).key(),
            node -> node.term(kind(node).classes()),
            Leaves.words(Arrays.stream(DamageKind.values())
                    .flatMap(kind -> Term.keys(kind.terms()).stream())
                    .distinct()));

    /** Damage of the kind that was read before it, or none of it. */
    static final Shape DAMAGE = Shape.of(
            (damage, grades) -> {
                Damage found = (Damage) damage;
                return found.equals(Damage.none(found.kind())) ? NONE : record().print(found, grades);
            },
            node -> List.of(NONE, kind(node).none().key()).contains(node.value())
                    ? Damage.none(kind(node))
                    : record().read(node.objectLike(example(kind(node))).only(parts(kind(node)))),
            definitions -> Shape.object("oneOf", List.of(Shape.object("const", NONE), record().schema(definitions))));

    private static DamageKind kind(Node node) {
        return (DamageKind) node.scope().find(KIND);
    }

    private static String example(DamageKind kind) {
        List<String> looks = Term.keys(kind.terms());
        return "{\"look\": \"" + looks.get(looks.size() - 1)
                + "\", \"share\": {\"value\": 5, \"unit\": \"%\"}}, none or " + Node.UNKNOWN + "; a look is one of "
                + String.join(", ", looks);
    }

    /** What may be told of damage of a kind. */
    private static List<String> parts(DamageKind kind) {
        return kind.depthScale().isPresent()
                ? List.of("look", "depth", "share", "count")
                : List.of("look", "share", "count");
    }

    private static Shape record() {
        return Shapes.of(Damage.class);
    }

    @Override
    public Object print(Object value, Grades grades) {
        Map<String, Object> fields = new LinkedHashMap<>();
        ((Map<?, ?>) value)
                .forEach((kind, damage) -> fields.put(((DamageKind) kind).key(), DAMAGE.print(damage, grades)));
        return fields;
    }

    @Override
    public Object read(Node around) {
        Node node = around.inner().only(Term.keys(List.of(DamageKind.values())));
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (DamageKind kind : DamageKind.values()) {
            node.scope().put(KIND, kind);
            node.known(kind.key()).ifPresent(damage -> damages.put(kind, (Damage) DAMAGE.read(damage)));
        }
        return damages;
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (DamageKind kind : DamageKind.values()) {
            Map<String, Object> looked = Leaves.words(
                    Stream.of(NONE, kind.none().key(), Node.UNKNOWN).distinct());
            properties.put(
                    kind.key(),
                    definitions.answer(
                            "damages." + kind.key(),
                            "",
                            Shape.object("oneOf", List.of(looked, schema(kind, definitions)))));
        }
        return Leaves.objectSchema(properties, List.of());
    }

    private static Map<String, Object> schema(DamageKind kind, Definitions definitions) {
        Map<String, Object> properties = Shape.object("look", Leaves.words(Term.keys(kind.terms()).stream()));
        List<Object> either = new ArrayList<>(List.of(Shape.object("required", List.of("look"))));
        if (kind.depthScale().isPresent()) {
            properties.put("depth", Amount.of(Dimension.LENGTH).alone().schema(definitions));
            either.add(Shape.object("required", List.of("depth")));
        }
        properties.put("share", Amount.of(Dimension.SHARE).alone().schema(definitions));
        properties.put("count", ZoneShares.countSchema(definitions));
        Map<String, Object> schema = Leaves.objectSchema(properties, List.of());
        schema.put("anyOf", either);
        return schema;
    }
}
