package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** How a target can be reached. */
public enum TargetVerdict implements Term {
    /** The floor is likely there already. */
    REACHED,

    /** More passes of the grit in work likely reach it. */
    MORE_PASSES,

    /** A grit of the remaining plan likely reaches it. */
    FINER_GRIT,

    /** Nothing in view is likely to reach it, but it is not out of reach. */
    OPEN,

    /** Nothing in view reaches it, however many passes follow. */
    OUT_OF_REACH,

    /** The stone itself cannot read that much. */
    OVER_CEILING
}
