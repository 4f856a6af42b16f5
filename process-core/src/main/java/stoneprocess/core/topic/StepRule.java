package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How closely grades must follow each other. */
public enum StepRule implements Term {
    /** Every grade of the sequence in use. */
    NO_SKIP,

    /** Each about twice the previous number. */
    USUAL
}
