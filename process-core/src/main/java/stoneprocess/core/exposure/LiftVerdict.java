package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How a lift compares with its limit, from the mildest to the worst. */
public enum LiftVerdict implements Term {
    /** At the recommended limit or below it. */
    WITHIN_LIMIT,
    /** Over it: use more people, a machine, or another way of lifting. */
    OVER_LIMIT,
    /** So far over it that nearly everybody is at risk, or beyond what one person may lift at all. */
    FAR_OVER_LIMIT
}
