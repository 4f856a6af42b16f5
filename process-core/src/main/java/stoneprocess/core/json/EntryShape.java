package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.Moment;
import stoneprocess.core.problem.InvalidInputException;

/** An entry of a job log: a moment and exactly one of work, look, reading, event and test area. */
final class EntryShape implements Shape {
    private static final String AT = "at";
    private static final String READING = "reading";

    private final Map<String, Class<?>> notes = new LinkedHashMap<>();

    EntryShape() {
        notes.put("work", Entry.Worked.class);
        notes.put("look", Entry.Looked.class);
        notes.put(READING, Reading.class);
        notes.put("event", Entry.Happened.class);
        notes.put("test-area", Entry.Tried.class);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>(List.of(AT));
        names.addAll(notes.keySet());
        return names;
    }

    @Override
    public Object print(Object value, Grades grades) {
        Object noted = value instanceof Entry.Read read ? read.reading() : value;
        Map<String, Object> fields = Shape.object(AT, ((Entry) value).at().print());
        notes.forEach((name, type) -> {
            if (type.isInstance(noted)) {
                fields.put(name, Shapes.of(type).print(noted, grades));
            }
        });
        return fields;
    }

    @Override
    public Object read(Node around) {
        Node node = around.inner().only(names());
        Moment at = (Moment) Leaves.MOMENT.read(node.get(AT));
        node.scope().put(AT, at);
        List<String> noted = notes.keySet().stream()
                .filter(name -> node.optional(name).isPresent())
                .toList();
        if (noted.size() != 1) {
            throw new InvalidInputException(
                    node.path(),
                    noted.isEmpty() ? "nothing but a moment" : String.join(" and ", noted),
                    "exactly one of " + String.join(", ", notes.keySet()));
        }
        String name = noted.get(0);
        Object read = Shapes.of(notes.get(name)).read(node.get(name));
        return name.equals(READING) ? new Entry.Read(at, (Reading) read) : read;
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> properties = Shape.object(AT, Leaves.MOMENT.schema(definitions));
        notes.forEach((name, type) -> properties.put(name, Shapes.of(type).schema(definitions)));
        Map<String, Object> schema = Leaves.objectSchema(properties, List.of(AT));
        schema.put(
                "oneOf",
                notes.keySet().stream()
                        .map(name -> Shape.object("required", List.of(name)))
                        .toList());
        return Typed.of(Entry.class).refer(definitions, () -> schema);
    }
}
