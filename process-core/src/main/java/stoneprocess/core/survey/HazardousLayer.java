package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Black or unknown adhesive, levelling layers and residues under or on the floor. */
public enum HazardousLayer implements Term {
    /** Looked for and none found. */
    NONE,

    /** Present, sampled, and cleared by a laboratory. */
    CLEARED,

    /** Present and not sampled. */
    UNTESTED,

    /** Present and found hazardous. */
    CONFIRMED
}
