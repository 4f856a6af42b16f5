package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** For which of two stones side by side the work is done. */
public enum MixedChoice implements Term {
    /** The soft one: it is finished well, the hard one stays as it is or duller. */
    SOFT_STONE,

    /** The hard one: it is finished well, the soft one ends lower and duller. */
    HARD_STONE
}
