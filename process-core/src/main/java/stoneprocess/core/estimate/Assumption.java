package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.source.Citation;

/**
 * A number that a figure rests on.
 *
 * @param name name of the parameter
 * @param value from and to; both ends equal for a single number
 * @param source where it comes from
 */
public record Assumption(String name, Range<Quantity> value, Citation source) {
    public Assumption {
        Refuse.nulls(Assumption.class, name, value, source);
    }

    /**
     * The parameter of this name, or the range from {@code name.low} to {@code name.high}.
     *
     * @throws stoneprocess.core.problem.InvalidInputException when there is neither
     */
    public static Assumption of(String name, Parameters parameters) {
        boolean single = parameters.all().stream().anyMatch(parameter -> name.equals(parameter.name()));
        Numbers numbers = new Numbers(parameters);
        return single ? numbers.single(name) : numbers.ranged(name);
    }
}
