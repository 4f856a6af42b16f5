package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;

/**
 * One of two sides of a matter that ended differently.
 *
 * @param <V> the topic's values
 * @param topic what was to be decided
 * @param closing how it ended
 * @param values its values; none unless it was decided
 * @param rules ids of the rules that spoke on this side only, ordered
 */
public record Side<V>(Topic<V> topic, Closing closing, List<V> values, List<String> rules) {
    public Side {
        Refuse.nulls(Side.class, topic, closing, values, rules);
        values = List.copyOf(values);
        rules = List.copyOf(rules);
    }

    /** The values' stable keys. */
    public List<String> keys() {
        return topic.keys(values);
    }
}
