package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Where a lift stands, from the mildest to the worst. */
public enum LiftVerdict implements Term {
    /** At the recommended limit or under it. */
    WITHIN_LIMIT,
    /** Over it: more people, a machine, or another way of lifting. */
    OVER_LIMIT,
    /** So far over it that nearly everybody is at risk, or outside what one person may lift at all. */
    FAR_OVER_LIMIT
}
