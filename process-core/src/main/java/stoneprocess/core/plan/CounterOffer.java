package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;

/**
 * A way out of an impasse. Its text says what the owner gives up.
 *
 * @param <V> the topic's values
 * @param kind what is offered
 * @param topic the topic that it releases
 * @param values the one value that becomes possible; for {@link OfferKind#GET_GRADES} every missing grit; for
 *     {@link OfferKind#OTHER_MACHINE} the machines of which any one would do; none where nothing can be named
 * @param rules ids of the rules whose demand it releases; none when it leaves the floor alone
 */
public record CounterOffer<V>(OfferKind kind, Topic<V> topic, List<V> values, List<String> rules) {
    public CounterOffer {
        Refuse.nulls(CounterOffer.class, kind, topic, values, rules);
        values = List.copyOf(values);
        rules = List.copyOf(rules);
    }

    /** The values' stable keys, as they are entered in a survey. */
    public List<String> keys() {
        return topic.keys(values);
    }
}
