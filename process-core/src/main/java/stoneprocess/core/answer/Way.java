package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * Changes that together give what was asked for.
 *
 * @param changes none where it is so already; in the order of the survey form, damage after it
 */
public record Way(List<Change> changes) {
    public Way {
        Refuse.nulls(Way.class, changes);
        changes = List.copyOf(changes);
    }

    /** Sum of the class steps of all changes. */
    public int classSteps() {
        return changes.stream().mapToInt(Change::classSteps).sum();
    }

    /** True when people can bring about every change; false when one of them is a matter of what the floor is. */
    public boolean byPeople() {
        return changes.stream().allMatch(change -> change.changedBy().byPeople());
    }
}
