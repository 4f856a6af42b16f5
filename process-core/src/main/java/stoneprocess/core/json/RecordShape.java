package stoneprocess.core.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A record as an object: its components in their order, their names with hyphens, an empty {@link Optional} left out. A
 * record with a constant {@code FORMAT} is a form of its own and says its version first; one with a component {@code
 * extras} keeps the fields of the user's own.
 */
final class RecordShape implements Shape {
    static final String FORMAT = "format";
    private static final String EXTRAS = "extras";

    /** One component and its field. */
    private record Part(
            String component, String name, Method accessor, Shape shape, boolean optional, Optional<Object> otherwise) {
        boolean mayBeAbsent() {
            return optional || otherwise.isPresent();
        }
    }

    private final Typed type;
    private final Details details;
    private final Optional<String> format;
    private final Map<String, String> constants = new LinkedHashMap<>();
    private final Constructor<?> constructor;
    private volatile @Nullable List<Part> parts;

    RecordShape(Typed type) {
        this.type = type;
        details = Details.find(type.raw());
        format = format(type.raw());
        format.ifPresent(version -> constants.put(FORMAT, version));
        try {
            constructor = type.raw()
                    .getConstructor(components().map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(type.raw() + " is not public", e);
        }
    }

    /** A record that a field of its own tells from others. */
    RecordShape(Typed type, String tag, String tagValue) {
        this(type);
        constants.put(tag, tagValue);
    }

    private Stream<RecordComponent> components() {
        return Arrays.stream(type.raw().getRecordComponents());
    }

    static Optional<String> format(Class<?> type) {
        try {
            return Optional.of((String) type.getField("FORMAT").get(null));
        } catch (NoSuchFieldException e) {
            return Optional.empty();
        } catch (IllegalAccessException e) {
            throw new IllegalArgumentException(type + " is not public", e);
        }
    }

    /** Found when they are first asked for, so that a record may hold records of its own kind. */
    private List<Part> parts() {
        List<Part> known = parts;
        if (known == null) {
            known = components().map(this::part).toList();
            parts = known;
        }
        return known;
    }

    private Part part(RecordComponent component) {
        String name = component.getName();
        Typed declared = type.resolve(component.getGenericType());
        String printed = details.printed.getOrDefault(name, name);
        boolean optional = declared.raw() == Optional.class && printed.equals(name);
        Typed present = optional ? declared.argument(0) : declared;
        return new Part(
                name,
                details.name(name),
                method(printed),
                isPrinted(name) ? details.shape(name).orElseGet(() -> Shapes.of(present)) : Leaves.TEXT,
                optional,
                Optional.ofNullable(details.otherwise.get(name)));
    }

    private Method method(String name) {
        return reflect(() -> type.raw().getMethod(name));
    }

    private boolean isPrinted(String component) {
        return !component.equals(EXTRAS) && !details.given.contains(component);
    }

    private Stream<Part> printed() {
        return parts().stream().filter(part -> isPrinted(part.component));
    }

    /** The names of all fields. */
    private List<String> names() {
        List<String> names = new ArrayList<>(constants.keySet());
        printed().map(Part::name).forEach(names::add);
        details.derived.stream().map(details::name).forEach(names::add);
        return names;
    }

    @Override
    public Object print(Object value, Grades around) {
        Grades grades = around;
        Map<String, Object> components = new LinkedHashMap<>();
        for (Part part : parts()) {
            Object component = reflect(() -> part.accessor.invoke(value));
            components.put(part.component, component);
            if (details.holdsSequence(part.component)) {
                grades = new Grades(Optional.of(details.sequence.apply(component)), details.gradesPath);
            }
        }
        Map<String, Object> fields = new LinkedHashMap<>(constants);
        for (Part part : parts()) {
            Object component = components.get(part.component);
            if (isPrinted(part.component) && !(part.mayBeAbsent() && isEmpty(component))) {
                Object present = component instanceof Optional<?> found ? found.get() : component;
                fields.put(part.name, part.shape.print(present, grades));
            }
        }
        for (String method : details.derived) {
            fields.put(details.name(method), derived(value, method));
        }
        return Extras.insert(components.get(EXTRAS), fields);
    }

    private static boolean isEmpty(Object component) {
        return component instanceof Optional<?> found && found.isEmpty()
                || component instanceof Collection<?> members && members.isEmpty()
                || component instanceof Map<?, ?> entries && entries.isEmpty();
    }

    private Object derived(Object value, String name) {
        Method method = method(name);
        return Shapes.of(method.getReturnType()).print(reflect(() -> method.invoke(value)), Grades.ANY);
    }

    /** Runs a look-up or a call; what a constructor refuses is thrown as it is. */
    private <T> T reflect(Callable<T> work) {
        try {
            return work.call();
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw new IllegalStateException(type.raw() + " failed", e);
        } catch (Exception e) {
            throw new IllegalStateException(type.raw() + " cannot be read or written", e);
        }
    }

    @Override
    public Object read(Node around) {
        Extras extras = new Extras(around.path());
        boolean keeps = parts().stream().anyMatch(part -> part.component.equals(EXTRAS));
        Node node =
                around.with(keeps ? around.scope().with(extras) : around.scope().inner());
        if (constants.containsKey(FORMAT)) {
            node.form(List.of(constants.get(FORMAT)));
        }
        List<String> names = names();
        node.only(names);
        @Nullable Object[] components = new Object[parts().size()];
        for (int i = 0; i < components.length; i++) {
            if (details.holdsSequence(parts().get(i).component)) {
                components[i] = read(parts().get(i), node);
                node = node.with(node.scope().with(details.sequence.apply(components[i])));
            }
        }
        for (int i = 0; i < components.length; i++) {
            Part part = parts().get(i);
            if (part.component.equals(EXTRAS)) {
                components[i] = extras.kept();
            } else if (components[i] == null) {
                components[i] = read(part, node);
                Scope scope = node.scope();
                scope.put(part.component, components[i]);
                details.topicAfter(part.component, scope).ifPresent(topic -> scope.put("topic", topic));
            }
        }
        Object value = node.checkedParts(names, () -> {
            Object read = reflect(() -> constructor.newInstance(components));
            details.check.accept(read);
            return read;
        });
        for (String method : details.derived) {
            Node told = node.get(details.name(method));
            Object expected = derived(value, method);
            if (!told.value().equals(expected)) {
                throw told.refused(expected + ", as the other fields tell");
            }
        }
        return value;
    }

    private Object read(Part part, Node node) {
        if (details.given.contains(part.component)) {
            return node.scope().find(part.component);
        }
        if (!part.mayBeAbsent()) {
            return part.shape.read(node.get(part.name));
        }
        Optional<Object> found =
                (details.orUnknown ? node.known(part.name) : node.optional(part.name)).map(part.shape::read);
        return part.optional ? found : found.or(part::otherwise).orElseThrow();
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        return format.map(version -> ofItsOwnForm(List.of(version)))
                .orElseGet(() -> type.refer(definitions, () -> objectSchema(definitions)));
    }

    /** A form inside another one has a schema of its own; the first of the versions that are read is the one printed. */
    static Map<String, Object> ofItsOwnForm(List<String> versions) {
        Map<String, Object> read =
                versions.size() == 1 ? Shape.object("const", versions.get(0)) : Leaves.words(versions.stream());
        Map<String, Object> schema =
                Shape.object("description", "As the schema of " + versions.get(0) + " describes it.");
        schema.putAll(Shape.object("type", "object", "properties", Shape.object(FORMAT, read)));
        schema.put("required", List.of(FORMAT));
        return schema;
    }

    /** The schema of the object itself. */
    Map<String, Object> objectSchema(Definitions definitions) {
        Map<String, Object> properties = new LinkedHashMap<>();
        constants.forEach((name, value) -> properties.put(name, Shape.object("const", value)));
        printed().forEach(part -> {
            Map<String, Object> schema = part.shape.schema(definitions);
            boolean orUnknown = part.mayBeAbsent() && details.orUnknown;
            properties.put(
                    part.name,
                    orUnknown ? Shape.object("anyOf", List.of(schema, Shape.object("const", Node.UNKNOWN))) : schema);
        });
        details.derived.forEach(method -> properties.put(
                details.name(method), Shapes.of(method(method).getReturnType()).schema(definitions)));
        List<String> required = new ArrayList<>(properties.keySet());
        printed().filter(Part::mayBeAbsent).map(Part::name).forEach(required::remove);
        return Leaves.objectSchema(properties, required);
    }
}
