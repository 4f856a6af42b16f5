package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How often the job went back to a coarser grit. */
public enum ReturnCount implements Term {
    /** Never. */
    NONE,

    /** Once. */
    ONCE,

    /** Twice or oftener. */
    OFTEN
}
