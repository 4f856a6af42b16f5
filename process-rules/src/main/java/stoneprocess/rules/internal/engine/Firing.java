package stoneprocess.rules.internal.engine;

import java.util.List;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;

/**
 * One firing of one rule, as the engine reported it.
 *
 * @param card the rule's card
 * @param contribution the one contribution that it made
 * @param facts the facts that it matched, in the order of its conditions
 */
public record Firing(Card card, Contribution contribution, List<Object> facts) {}
