package stoneprocess.core.json;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * A part of a schema; references are followed.
 *
 * @param schema the whole schema
 * @param value the part
 */
record Described(Map<?, ?> schema, Object value) {
    private static final String DEFINITIONS = "#/$defs/";

    static Described by(Form<?> form) {
        Map<?, ?> schema = (Map<?, ?>) Tree.parse(form.schema(), "schema");
        return new Described(schema, schema);
    }

    private Described part(Object part) {
        if (part instanceof Map<?, ?> fields && fields.get("$ref") instanceof String reference) {
            Map<?, ?> definitions = (Map<?, ?>) schema.get("$defs");
            return part(definitions.get(reference.substring(DEFINITIONS.length())));
        }
        return new Described(schema, part);
    }

    Map<?, ?> object() {
        return (Map<?, ?>) value;
    }

    Optional<Described> optional(String name) {
        return Optional.ofNullable(object().get(name)).map(this::part);
    }

    Described get(String name) {
        return optional(name).orElseThrow(() -> new NoSuchElementException(name + " in " + object().keySet()));
    }

    Described first(String name) {
        return part(((List<?>) object().get(name)).get(0));
    }

    /** How many members a list has. */
    int size() {
        return ((List<?>) value).size();
    }

    Described member(int index) {
        return part(((List<?>) value).get(index));
    }

    Described last(String name) {
        List<?> members = (List<?>) object().get(name);
        return part(members.get(members.size() - 1));
    }

    List<String> texts() {
        return ((List<?>) value).stream().map(String.class::cast).toList();
    }

    List<String> names() {
        return object().keySet().stream().map(String.class::cast).toList();
    }
}
