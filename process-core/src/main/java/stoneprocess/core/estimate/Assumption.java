package stoneprocess.core.estimate;

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
public record Assumption(String name, Range<Quantity> value, Citation source) {}
