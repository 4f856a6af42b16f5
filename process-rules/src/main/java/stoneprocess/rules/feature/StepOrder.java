package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Where a step stands in its track. */
public enum StepOrder implements Term {
    /** The first. */
    FIRST,

    /** The second. */
    SECOND,

    /** A later one. */
    LATER
}
