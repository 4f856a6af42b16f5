package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** Which way the meter lay. Each place is read in two directions at right angles, since passes leave a lay. */
public enum Direction implements Term {
    /** Along the long side of the room or the last passes. */
    ALONG,

    /** At right angles to that. */
    ACROSS,

    /** Not noted. */
    NOT_NOTED
}
