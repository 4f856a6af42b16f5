package stoneprocess.core.parameter;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * A scale by its name, before its limits are read from parameters.
 *
 * @param name name of the scale; its limits are the parameters {@code name.class}
 * @param classes the classes, from the lowest
 */
public record NamedScale<E extends Enum<E> & Term>(String name, Class<E> classes) {
    public NamedScale {
        Refuse.nulls(NamedScale.class, name, classes);
    }

    /**
     * The scale with its limits.
     *
     * @throws InvalidInputException when a limit is missing, or the limits do not rise from above zero
     */
    public Scale<E> in(Parameters parameters) {
        return Scale.of(name, classes, parameters);
    }
}
