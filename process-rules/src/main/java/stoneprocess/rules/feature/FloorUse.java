package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether people have walked on the floor since it was worked. */
public enum FloorUse implements Term {
    /** No work is noted: a floor in use. */
    IN_USE,

    /** The work is under way. */
    UNDER_WORK
}
