package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether something is there. */
public enum Presence implements Term {
    /** Looked for and not there. */
    NONE,

    /** There. */
    PRESENT
}
