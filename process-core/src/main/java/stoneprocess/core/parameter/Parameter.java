package stoneprocess.core.parameter;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Citation;

/**
 * One number that the rules depend on.
 *
 * @param name dotted name; the lower limit of a scale's class is {@code scale.class}
 * @param value the number with its unit
 * @param source where it comes from
 * @param house what a house may set in place of the shipped number
 */
public record Parameter(String name, Quantity value, Citation source, HouseBound house) {
    public Parameter {
        Refuse.nulls(Parameter.class, name, value, source, house);
    }
}
