package stoneprocess.rules.decide;

import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;

/**
 * A contribution together with the reason that is kept of it.
 *
 * @param contribution what was stated
 * @param reason by which rule, on which facts
 */
public record Stated(Contribution contribution, Reason reason) {
    public Stated {
        Refuse.nulls(Stated.class, contribution, reason);
    }

    ContributionKind kind() {
        return contribution.kind();
    }

    boolean isWish() {
        return kind() == ContributionKind.WISH;
    }
}
