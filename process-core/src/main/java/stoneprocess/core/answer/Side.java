package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * One of two sides of a matter that ended differently.
 *
 * @param closing how it ended
 * @param values keys of its values
 * @param rules ids of the rules that spoke on this side only, ordered
 */
public record Side(Closing closing, List<String> values, List<String> rules) {
    /** Copies the lists. */
    public Side {
        Refuse.nulls(Side.class, closing, values, rules);
        values = List.copyOf(values);
        rules = List.copyOf(rules);
    }
}
