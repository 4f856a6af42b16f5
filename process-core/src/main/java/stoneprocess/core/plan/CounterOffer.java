package stoneprocess.core.plan;

import java.util.List;
import java.util.Optional;

/**
 * A way out of an impasse. Its text says what the owner gives up.
 *
 * @param kind what is offered
 * @param topic id of the topic that it releases
 * @param value key of the value that becomes possible, where one can be named; for missing grades, their keys with
 *     spaces between
 * @param rules ids of the rules whose demand it releases; none when it leaves the floor alone
 */
public record CounterOffer(OfferKind kind, String topic, Optional<String> value, List<String> rules) {
    public CounterOffer {
        rules = List.copyOf(rules);
    }
}
