package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether a step is the last of its track. */
public enum StepEnd implements Term {
    /** The last. */
    LAST,

    /** Another follows. */
    NOT_LAST
}
