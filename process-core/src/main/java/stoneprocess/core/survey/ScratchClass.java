package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How deep a scratch is, by what a crew can see and feel. */
public enum ScratchClass implements Term {
    /** No line in raking light. */
    NONE,

    /** Seen, not felt. */
    SEEN,

    /** Felt by a fingernail. */
    FELT_BY_NAIL,

    /** Caught by the edge of a coin. */
    FELT_BY_COIN,

    /** A groove that holds the edge of a coin. */
    DEEP,

    /** Deeper than grinding should follow. */
    GOUGED
}
