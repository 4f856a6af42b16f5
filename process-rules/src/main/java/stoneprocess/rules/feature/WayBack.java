package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether the work may go back so far. */
public enum WayBack implements Term {
    /** It may. */
    OPEN,

    /** There is no such grit, or the floor does not allow it. */
    BARRED
}
