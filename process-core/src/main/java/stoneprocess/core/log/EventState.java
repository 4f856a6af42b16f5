package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** Whether an event still stands. */
public enum EventState implements Term {
    /** It stands. */
    OPEN,

    /** It was dealt with. */
    SETTLED
}
