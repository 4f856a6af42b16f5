package stoneprocess.core.estimate;

import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;

/** The parameters of this room, as figures and as assumptions. */
record Numbers(Parameters parameters) {
    /** In the kept unit: one number, or the end of a range that belongs to the case. */
    double at(String name, Case which) {
        return which.of(range(name));
    }

    double at(String name) {
        return parameters.get(name, Quantity.class).kept();
    }

    /**
     * A rate or a life that something is divided by, in the kept unit.
     *
     * @throws InvalidInputException when it was retuned to zero
     */
    double divisor(String name, Case which) {
        Range<Quantity> range = range(name);
        Require.positive(name + ".low", range.low());
        return which.of(range);
    }

    /** A percentage as a share of one. */
    double share(String name, Case which) {
        return at(name, which) / 100;
    }

    double share(String name) {
        return parameters.part(name);
    }

    Range<Quantity> range(String name) {
        return parameters.range(name, Quantity.class);
    }

    Assumption ranged(String name) {
        return new Assumption(
                name, range(name), parameters.parameter(name + ".low").source());
    }

    Assumption single(String name) {
        Parameter parameter = parameters.parameter(name);
        return new Assumption(name, Range.of(parameter.value(), parameter.value()), parameter.source());
    }
}
