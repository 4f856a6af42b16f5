package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Class of the shod ramp test (EN 16165 annex B), from the lowest. */
public enum RampClass implements Term {
    /** Below the lowest class. */
    UNCLASSED,
    /** 6 degrees and over. */
    R9,
    /** Over 10 degrees. */
    R10,
    /** Over 19 degrees. */
    R11,
    /** Over 27 degrees. */
    R12,
    /** Over 35 degrees. */
    R13
}
