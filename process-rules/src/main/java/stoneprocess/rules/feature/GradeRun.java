package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How the planned grits up to the one in work were worked. */
public enum GradeRun implements Term {
    /** Each in at least the fewest passes planned. */
    ALL_WORKED,

    /** One of them in fewer passes than planned. */
    CUT_SHORT,

    /** One of them was left out. */
    SKIPPED
}
