package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How much edge there is for the area. */
public enum EdgeLength implements Term {
    /** Nothing borders the floor. */
    NONE,

    /** Less than the edge of a narrow floor. */
    USUAL,

    /** So much that the hand tool works as long as the machine. */
    MUCH
}
