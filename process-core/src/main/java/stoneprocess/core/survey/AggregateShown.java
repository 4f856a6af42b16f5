package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How much aggregate the owner wants to see in concrete. */
public enum AggregateShown implements Term {
    /** Paste only. */
    CREAM,

    /** Fine aggregate, sand. */
    FINE,

    /** Aggregate of middle size. */
    MEDIUM,

    /** The whole of the coarse aggregate. */
    COARSE
}
