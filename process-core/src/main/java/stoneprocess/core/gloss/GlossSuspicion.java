package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** What a reading that is too high tells. */
public enum GlossSuspicion implements Term {
    /** Nothing: the reading is possible. */
    NONE,

    /** Higher than the grit can give: look for water, a coating, wax or residue. */
    FILM,

    /** Higher than the stone can read at all: calibration, wrong angle or another stone than thought. */
    OVER_CEILING
}
