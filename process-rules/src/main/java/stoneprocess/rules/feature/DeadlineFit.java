package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether the cutting of the open field and the longest rest before it fit before the deadline. */
public enum DeadlineFit implements Term {
    /** They fit; drying, edges and curing may still run over. */
    FITS,

    /** They alone take longer. */
    TOO_SHORT
}
