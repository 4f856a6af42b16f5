package stoneprocess.core.answer;

/**
 * A matter that two recommendations close differently, or alike for different reasons.
 *
 * @param matter the matter
 * @param one how the one closes it
 * @param other how the other does
 */
public record MatterDifference(Matter matter, Side one, Side other) {
    /** True when the outcome itself differs, false when only the rules behind it do. */
    public boolean changed() {
        return one.closing() != other.closing() || !one.values().equals(other.values());
    }
}
