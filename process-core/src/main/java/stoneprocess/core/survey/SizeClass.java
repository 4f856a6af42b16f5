package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How large the floor is. */
public enum SizeClass implements Term {
    /** A landing or a niche. */
    TINY,

    /** A single disc does it. */
    SMALL,

    /** By flatness and access. */
    MIDDLE,

    /** A heavy machine pays. */
    LARGE
}
