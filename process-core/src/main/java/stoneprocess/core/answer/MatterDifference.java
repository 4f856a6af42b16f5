package stoneprocess.core.answer;

import stoneprocess.core.internal.check.Refuse;

/**
 * A matter that two recommendations close differently, or alike for different reasons.
 *
 * @param matter the matter
 * @param one how the one closes it
 * @param other how the other does
 */
public record MatterDifference(Matter matter, Side<?> one, Side<?> other) {
    public MatterDifference {
        Refuse.nulls(MatterDifference.class, matter, one, other);
    }

    /** True when the outcome itself differs, false when only the rules behind it do. */
    public boolean changed() {
        return one.closing() != other.closing() || !one.values().equals(other.values());
    }
}
