package stoneprocess.core.follow;

import stoneprocess.core.term.Term;

/** How a cause stands, from the strongest. */
public enum Standing implements Term {
    /** More speaks for it than for any other. */
    LEADING,

    /** Something speaks for it. */
    POSSIBLE,

    /** Something speaks for it, and something known rules it out. */
    EXCLUDED,

    /** Not indicated. */
    NOT_SUGGESTED
}
