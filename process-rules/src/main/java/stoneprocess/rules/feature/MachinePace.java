package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Which floor machine takes the fewest likely person-hours over the grits of the open field. */
public enum MachinePace implements Term {
    /** There is no open field to cut, or both machines take the same hours. */
    EVEN,

    /** The slow single disc. */
    SINGLE_DISC,

    /** The planetary machine. */
    PLANETARY
}
