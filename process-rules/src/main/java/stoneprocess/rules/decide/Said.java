package stoneprocess.rules.decide;

import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Contribution;

/**
 * A contribution together with the reason that is kept of it.
 *
 * @param contribution what was said
 * @param reason by which rule, on which facts
 */
public record Said(Contribution contribution, Reason reason) {}
