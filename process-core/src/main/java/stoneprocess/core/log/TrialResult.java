package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** How a try on the test area came out. */
public enum TrialResult implements Term {
    /** The damage is gone and the look is as agreed. */
    CLEARED,

    /** Damage is left: one grit coarser is tried. */
    NOT_CLEARED,

    /** More was cut than was needed: one grit finer is tried. */
    TOO_MUCH
}
