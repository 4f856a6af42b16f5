package stoneprocess.core.json;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The named parts of one schema, each described once. */
final class Definitions {
    private final Map<String, Object> byName = new LinkedHashMap<>();
    private final Map<Object, String> names = new HashMap<>();
    private final Function<String, String> questions;

    /** @param questions from the name of a survey's field to its question; empty where there is no more to say */
    Definitions(Function<String, String> questions) {
        this.questions = questions;
    }

    /** The schema of what answers a question of a survey, with the question and what else is told before the rest. */
    Map<String, Object> answer(String field, String besides, Map<String, Object> schema) {
        String description = Stream.of(questions.apply(field), besides)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
        if (description.isEmpty()) {
            return schema;
        }
        Map<String, Object> described = Shape.object("description", description);
        described.putAll(schema);
        return described;
    }

    /**
     * A reference to a part.
     *
     * @param name what it is called
     * @param longName what it is called when another part has that name
     * @param part what tells it from other parts
     */
    Map<String, Object> refer(String name, String longName, Object part, Supplier<Map<String, Object>> schema) {
        String known = names.get(part);
        if (known == null) {
            known = byName.containsKey(name) ? longName : name;
            if (byName.containsKey(known)) {
                throw new IllegalStateException("Two parts of a schema are called " + known);
            }
            names.put(part, known);
            byName.put(known, Map.of());
            byName.put(known, schema.get());
        }
        return Shape.object("$ref", "#/$defs/" + known);
    }

    Map<String, Object> byName() {
        return byName;
    }
}
