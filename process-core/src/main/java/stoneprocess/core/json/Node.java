package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.term.Term;

/** A value of a JSON tree that knows its path, so that every error names the field. */
record Node(String path, Object value) {
    private static final int LONGEST_NAME = 60;

    private InvalidInputException refused(String accepted) {
        return new InvalidInputException(path, describe(), accepted);
    }

    private String describe() {
        if (value instanceof Map<?, ?>) {
            return "an object";
        }
        return value instanceof List<?> ? "an array" : String.valueOf(value);
    }

    private String pathOf(String name) {
        return pathOf(path, name);
    }

    /** The path of a field; a name that no form has is cut short and stripped of what could break the line. */
    static String pathOf(String path, String name) {
        String shown = name.replaceAll("[^A-Za-z0-9_.-]", "?");
        if (shown.length() > LONGEST_NAME) {
            shown = shown.substring(0, LONGEST_NAME) + "...";
        }
        return path.isEmpty() ? shown : path + "." + shown;
    }

    Map<String, Object> object() {
        if (value instanceof Map<?, ?> fields) {
            Map<String, Object> typed = new java.util.LinkedHashMap<>();
            fields.forEach((name, member) -> typed.put((String) name, member));
            return typed;
        }
        throw refused("an object");
    }

    /** This object, which must be of the given form and version. */
    Node form(String what, String form) {
        if (!(value instanceof Map)) {
            throw new InvalidInputException(path.isEmpty() ? what : path, String.valueOf(value), "a JSON object");
        }
        Node format = get("format");
        if (!format.isText(form)) {
            throw new InvalidInputException(format.path(), String.valueOf(format.value()), form);
        }
        return this;
    }

    /** The object's fields, none of them outside the accepted names. */
    Node only(Collection<String> accepted) {
        for (String name : object().keySet()) {
            if (!accepted.contains(name)) {
                throw new InvalidInputException(
                        pathOf(name), "the field", "only the fields " + String.join(", ", accepted));
            }
        }
        return this;
    }

    Optional<Node> optional(String name) {
        Object member = object().get(name);
        return member == null ? Optional.empty() : Optional.of(new Node(pathOf(name), member));
    }

    Node get(String name) {
        return optional(name)
                .orElseThrow(() -> new InvalidInputException(pathOf(name), "nothing", "a value; the field is missing"));
    }

    boolean isText(String text) {
        return text.equals(value);
    }

    String text() {
        if (value instanceof String text) {
            return text;
        }
        throw refused("a text");
    }

    boolean flag() {
        if (value instanceof Boolean flag) {
            return flag;
        }
        throw refused("true or false");
    }

    BigDecimal number() {
        if (value instanceof BigDecimal number) {
            return number;
        }
        throw refused("a number");
    }

    int integer() {
        try {
            return number().intValueExact();
        } catch (ArithmeticException e) {
            throw refused("a whole number");
        }
    }

    /** A whole number that is not below the least. */
    int integer(int least) {
        int number = integer();
        if (number < least) {
            throw refused("a whole number of " + least + " or more");
        }
        return number;
    }

    List<Node> array() {
        if (value instanceof List<?> members) {
            List<Node> nodes = new ArrayList<>();
            for (int i = 0; i < members.size(); i++) {
                nodes.add(new Node(path + "[" + i + "]", members.get(i)));
            }
            return nodes;
        }
        throw refused("an array");
    }

    <T> List<T> list(Function<Node, T> member) {
        return array().stream().map(member).toList();
    }

    List<String> texts() {
        return list(Node::text);
    }

    <E extends Enum<E> & Term> E term(Class<E> type) {
        return Term.parse(type, text(), path);
    }

    /** The constants of an enum, each at most once. */
    <E extends Enum<E> & Term> Set<E> terms(Class<E> type) {
        Set<E> terms = new LinkedHashSet<>();
        for (Node member : array()) {
            if (!terms.add(member.term(type))) {
                throw member.refused("each value once");
            }
        }
        return terms;
    }

    /** A quantity of a dimension, in any of its units. */
    Quantity quantity(Dimension dimension) {
        only(List.of("value", "unit"));
        Unit unit = Unit.parse(dimension, get("unit").text(), path);
        return get("value").quantity(unit);
    }

    /** This number in a unit. */
    Quantity quantity(Unit unit) {
        BigDecimal amount = number();
        return checked(() -> Quantity.of(amount, unit));
    }

    /** Runs a constructor that checks its arguments, and names this field when it refuses them. */
    <T> T checked(java.util.function.Supplier<T> make) {
        try {
            return make.get();
        } catch (InvalidInputException e) {
            throw new InvalidInputException(path, e.value(), e.accepted());
        }
    }

    /** The same, where the constructor names one of its own parts, which is put behind this field's path. */
    <T> T checkedParts(java.util.function.Supplier<T> make) {
        try {
            return make.get();
        } catch (InvalidInputException e) {
            throw path.isEmpty() ? e : e.within(path);
        }
    }
}
