package stoneprocess.core.parameter;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.term.Term;

/**
 * Turns a number into a class. The classes are half-open intervals in the order of the enum: a class holds from its
 * lower limit, which belongs to it, up to the next class's limit, which does not. The limits are parameters named
 * {@code scale.class}; the first class has none and starts at zero.
 *
 * @param <E> the classes
 */
public final class Scale<E extends Enum<E> & Term> {
    private final String name;
    private final List<E> classes;
    private final List<Quantity> limits;

    private Scale(String name, List<E> classes, List<Quantity> limits) {
        this.name = name;
        this.classes = classes;
        this.limits = limits;
    }

    /**
     * The scale over all constants of an enum.
     *
     * @throws InvalidInputException when a limit is missing, or the limits do not rise from above zero
     */
    public static <E extends Enum<E> & Term> Scale<E> of(String name, Class<E> type, Parameters parameters) {
        return of(name, List.of(type.getEnumConstants()), parameters);
    }

    /**
     * The scale over some constants, in the order given.
     *
     * @throws InvalidInputException when a limit is missing, or the limits do not rise from above zero
     */
    public static <E extends Enum<E> & Term> Scale<E> of(String name, List<E> classes, Parameters parameters) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(parameters, "parameters");
        List<Quantity> limits = new ArrayList<>();
        for (E next : classes.subList(1, classes.size())) {
            Parameter limit = parameters.parameter(name + "." + next.key());
            if (limits.isEmpty() && limit.value().kept() == 0) {
                throw new InvalidInputException(
                        limit.name(), limit.value().print(), "more than zero, where the class below it starts");
            }
            if (!limits.isEmpty() && limits.get(limits.size() - 1).compareTo(limit.value()) >= 0) {
                throw new InvalidInputException(
                        limit.name(),
                        limit.value().print(),
                        "more than " + limits.get(limits.size() - 1).print() + ", the limit below it");
            }
            limits.add(limit.value());
        }
        return new Scale<>(name, List.copyOf(classes), List.copyOf(limits));
    }

    public String name() {
        return name;
    }

    public List<E> classes() {
        return classes;
    }

    /** Lower limits of all classes but the first. */
    public List<Quantity> limits() {
        return limits;
    }

    /** The class that a value falls into. */
    public E classify(Quantity value) {
        int index = 0;
        while (index < limits.size() && limits.get(index).compareTo(value) <= 0) {
            index++;
        }
        return classes.get(index);
    }
}
