package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether and how the finish is reached, by the readings so far and what is usual. */
public enum OutlookClass implements Term {
    /** No forecast. */
    NOT_JUDGED,

    /** Likely there. */
    REACHED,

    /** More passes of this grit likely reach it. */
    BY_PASSES,

    /** A grit to come likely reaches it. */
    BY_FINER_GRADE,

    /** Nothing in view likely reaches it, but it is not out of reach. */
    OPEN,

    /** Nothing in view reaches it. */
    OUT_OF_REACH,

    /** The stone itself cannot read as much. */
    OVER_STONE
}
