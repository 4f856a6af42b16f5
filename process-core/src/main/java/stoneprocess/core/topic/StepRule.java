package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How closely grits must follow each other. */
public enum StepRule implements Term {
    /** Every grit of the sequence in use. */
    NO_SKIP,

    /** Each about twice the previous number. */
    USUAL
}
