package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * A way out of an impasse. Its text says what the owner gives up.
 *
 * @param kind what is offered
 * @param topic id of the topic that it releases
 * @param values keys, each as it is entered in a survey or read from a topic: the one value that becomes possible; for
 *     {@link OfferKind#GET_GRADES} every missing grade; for {@link OfferKind#OTHER_MACHINE} the machines of which any one
 *     would do; none where nothing can be named
 * @param rules ids of the rules whose demand it releases; none when it leaves the floor alone
 */
public record CounterOffer(OfferKind kind, String topic, List<String> values, List<String> rules) {
    /** Copies the lists. */
    public CounterOffer {
        Refuse.nulls(CounterOffer.class, kind, topic, values, rules);
        values = List.copyOf(values);
        rules = List.copyOf(rules);
    }
}
