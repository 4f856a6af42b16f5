package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How long ago that was. */
public enum TreatedAgo implements Term {
    /** Within the last year. */
    WITHIN_A_YEAR,

    /** Longer ago. */
    LONGER
}
