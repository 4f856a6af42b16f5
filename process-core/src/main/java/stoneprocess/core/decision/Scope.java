package stoneprocess.core.decision;

import stoneprocess.core.term.Term;

/** What a topic is decided for. */
public enum Scope implements Term {
    /** Once for the floor. */
    FLOOR,

    /** For each track. */
    TRACK,

    /** For each grade of each track. */
    STEP
}
