package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/** A value of a JSON tree that knows its path, so that every error names the field, and what was read around it. */
record Node(String path, Object value, Scope scope) {
    static final String UNKNOWN = "unknown";
    private static final int LONGEST_NAME = 60;

    InvalidInputException refused(String accepted) {
        return new InvalidInputException(path, describe(), accepted);
    }

    private String describe() {
        if (value instanceof Map<?, ?>) {
            return "an object";
        }
        return value instanceof List<?> ? "an array" : String.valueOf(value);
    }

    /** The path of a field; a name that no form has is cut short and stripped of what could break the line. */
    static String pathOf(String path, String name) {
        String shown = name.isEmpty() ? "(no name)" : name.replaceAll("[^A-Za-z0-9_.-]", "?");
        if (shown.length() > LONGEST_NAME) {
            shown = shown.substring(0, LONGEST_NAME) + "...";
        }
        return path.isEmpty() ? shown : path + "." + shown;
    }

    private <T> T as(Class<T> type, String accepted) {
        if (type.isInstance(value)) {
            return type.cast(value);
        }
        throw refused(accepted);
    }

    @SuppressWarnings("unchecked")
    Map<String, Object> object() {
        return as(Map.class, "an object");
    }

    /** This value, which must be an object; the example shows what one looks like. */
    Node objectLike(String example) {
        as(Map.class, "an object such as " + example);
        return this;
    }

    /** The same value, read inside a record of its own. */
    Node inner() {
        return with(scope.inner());
    }

    Node with(Scope other) {
        return new Node(path, value, other);
    }

    /** This object, which must be of one of the given versions of a form. */
    Node form(List<String> versions) {
        Object format = object().get(RecordShape.FORMAT);
        if (format == null || !versions.contains(format)) {
            String accepted = String.join(", ", versions);
            String field = pathOf(path, RecordShape.FORMAT);
            throw format == null
                    ? InvalidInputException.saying(field, "nothing", accepted, "the field is missing")
                    : new InvalidInputException(field, String.valueOf(format), accepted);
        }
        return this;
    }

    /** The object's fields, none of them outside the accepted names but those of the user's own. */
    Node only(Collection<String> accepted) {
        for (Map.Entry<String, Object> field : object().entrySet()) {
            String name = field.getKey();
            if (name.startsWith(Extras.PREFIX)) {
                scope.extras().ifPresent(extras -> extras.keep(path, name, field.getValue()));
            } else if (!accepted.contains(name)) {
                throw InvalidInputException.saying(
                        pathOf(path, name),
                        "the field",
                        String.join(", ", accepted),
                        "there is no such field" + (path.isEmpty() ? "" : " under " + path));
            }
        }
        return this;
    }

    Optional<Node> optional(String name) {
        Object member = object().get(name);
        return member == null ? Optional.empty() : Optional.of(new Node(pathOf(path, name), member, scope));
    }

    /** The field, unless it is left out or "unknown", which mean the same. */
    Optional<Node> known(String name) {
        return optional(name).filter(field -> !UNKNOWN.equals(field.value));
    }

    Node get(String name) {
        return optional(name)
                .orElseThrow(() ->
                        InvalidInputException.saying(pathOf(path, name), "nothing", "a value", "the field is missing"));
    }

    String text() {
        return as(String.class, "a text");
    }

    boolean flag() {
        return as(Boolean.class, "true or false");
    }

    BigDecimal number() {
        return as(BigDecimal.class, "a number");
    }

    int integer() {
        try {
            return number().intValueExact();
        } catch (ArithmeticException e) {
            throw refused("a whole number");
        }
    }

    List<Node> array() {
        List<?> members = as(List.class, "an array, such as [] for none");
        return IntStream.range(0, members.size())
                .mapToObj(i -> new Node(path + "[" + i + "]", members.get(i), scope))
                .toList();
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    Term term(Class<?> type) {
        String accepted = "a text, one of " + Leaves.keys(type).collect(Collectors.joining(", "));
        return (Term) Term.parse((Class) type, as(String.class, accepted), path);
    }

    /** Runs a constructor that checks its arguments, and names this field when it refuses them. */
    <T> T checked(Supplier<T> make) {
        try {
            return make.get();
        } catch (InvalidInputException e) {
            throw e.at(path);
        }
    }

    /**
     * Runs a constructor that checks its arguments, and puts what it names behind this field's path.
     *
     * @param parts the fields of this object; a part that the constructor names is one of them from there on
     */
    <T> T checkedParts(Collection<String> parts, Supplier<T> make) {
        try {
            return make.get();
        } catch (InvalidInputException e) {
            List<String> named = List.of(e.field().split("\\."));
            for (int i = 0; i < named.size(); i++) {
                if (parts.contains(named.get(i))) {
                    String part = String.join(".", named.subList(i, named.size()));
                    throw e.at(pathOf(path, part));
                }
            }
            throw path.isEmpty() ? e : e.at(path);
        }
    }
}
