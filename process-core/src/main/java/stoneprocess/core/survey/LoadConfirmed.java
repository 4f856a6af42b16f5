package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Who confirmed that the floor carries the machines. */
public enum LoadConfirmed implements Term {
    /** A structural engineer or the drawings of one. */
    ENGINEER,

    /** The owner, by word. */
    OWNER,

    /** Nobody. */
    NOBODY
}
