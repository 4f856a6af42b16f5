package stoneprocess.core.follow;

import stoneprocess.core.term.Term;

/** What becomes of the entry. */
public enum Effect implements Term {
    /** It counts. */
    COUNTED,

    /** It counts at its own moment. */
    TAKEN_IN_ORDER,

    /** It counts, and is to be checked. */
    COUNTS_WITH_CARE,

    /** It does not count at this hold point. */
    SET_ASIDE
}
