package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether cracks do harm. */
public enum CrackHarm implements Term {
    /** Nobody trips over them, no water gets in, and they do not grow. */
    HARMLESS,

    /** They trip people or let water in, and stand still. */
    HARMFUL,

    /** They grow, open and close, or run through pieces and joints from wall to wall or column to column. */
    MOVING
}
