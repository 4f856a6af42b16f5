package stoneprocess.core.json;

import java.util.LinkedHashMap;
import java.util.Map;

/** A sealed interface: one of its records, told by a field that is named first. */
final class UnionShape implements Shape {
    private final Typed type;
    private final String tag;
    private final Map<String, RecordShape> byTag = new LinkedHashMap<>();
    private final Map<Class<?>, RecordShape> byClass = new LinkedHashMap<>();

    UnionShape(Typed type) {
        this.type = type;
        tag = Details.find(type.raw()).tag;
        for (Class<?> permitted : type.raw().getPermittedSubclasses()) {
            String value = Typed.kebab(permitted.getSimpleName()).replaceFirst("^of-", "");
            RecordShape shape = new RecordShape(Typed.of(permitted), tag, value);
            byTag.put(value, shape);
            byClass.put(permitted, shape);
        }
    }

    @Override
    public Object print(Object value, Grades grades) {
        return byClass.get(value.getClass()).print(value, grades);
    }

    @Override
    public Object read(Node node) {
        Node told = node.get(tag);
        RecordShape shape = byTag.get(told.text());
        if (shape == null) {
            throw told.refused("one of " + String.join(", ", byTag.keySet()));
        }
        return shape.read(node);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        return type.refer(
                definitions,
                () -> Shape.object(
                        "oneOf",
                        byTag.values().stream()
                                .map(shape -> shape.schema(definitions))
                                .toList()));
    }
}
