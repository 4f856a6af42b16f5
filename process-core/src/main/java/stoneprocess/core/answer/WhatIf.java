package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;

/**
 * A floor as it is and with some of its facts changed, both answered by the same rules.
 *
 * @param changes what was changed
 * @param before the recommendation for the floor as it is
 * @param after the recommendation for the floor with the changes
 */
public record WhatIf(List<Change> changes, Recommendation before, Recommendation after) {
    public WhatIf {
        Refuse.nulls(WhatIf.class, changes, before, after);
        changes = List.copyOf(changes);
    }
}
