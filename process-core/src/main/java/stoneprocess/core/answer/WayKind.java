package stoneprocess.core.answer;

import stoneprocess.core.term.Term;

/** What a search for the smallest change came to. */
public enum WayKind implements Term {
    /** It is so without any change. */
    ALREADY,

    /** One or two changes give it. */
    FOUND,

    /** Some changes give it; the search ended before all were tried, so that smaller ones and others may give it too. */
    FOUND_SO_FAR,

    /** No one or two changes of those that were searched give it. */
    NONE_WITHIN_TWO,

    /** None of those that were tried gives it; the search ended before all were tried. */
    NONE_SO_FAR;

    /** True when changes were found that give it. */
    public boolean isFound() {
        return this == FOUND || this == FOUND_SO_FAR;
    }

    /** True when no changes were found. */
    public boolean isNone() {
        return this == NONE_WITHIN_TWO || this == NONE_SO_FAR;
    }
}
