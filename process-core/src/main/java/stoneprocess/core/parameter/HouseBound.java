package stoneprocess.core.parameter;

import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.term.Term;

/** What a house may set in place of a shipped number. Numbers behind safety rules move to the careful side only. */
public enum HouseBound implements Term {
    /** Any value of the same dimension. */
    FREE,
    /** The shipped number or more. */
    AT_LEAST,
    /** The shipped number or less. */
    AT_MOST,
    /** The shipped number only. */
    FIXED;

    /** True when a house may set the value where this one is shipped. */
    public boolean allows(Quantity value, Quantity shipped) {
        int order = value.compareTo(shipped);
        return switch (this) {
            case FREE -> true;
            case AT_LEAST -> order >= 0;
            case AT_MOST -> order <= 0;
            case FIXED -> order == 0;
        };
    }

    /** What is accepted in words, for an error. */
    String accepted(Quantity shipped) {
        return switch (this) {
            case FREE -> "any value";
            case AT_LEAST -> shipped.print() + " or more";
            case AT_MOST -> shipped.print() + " or less";
            case FIXED -> shipped.print() + " only";
        };
    }
}
