package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How fine a grade is. */
public enum GritClass implements Term {
    /** Under 100. */
    COARSE,

    /** 100 to under 400. */
    MEDIUM,

    /** 400 to 800. */
    FINE,

    /** Over 800 to under 2000. */
    POLISHING,

    /** 2000 and finer. */
    FINEST
}
