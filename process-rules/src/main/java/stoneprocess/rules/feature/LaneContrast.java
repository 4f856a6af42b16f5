package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The lanes against the field beside them. */
public enum LaneContrast implements Term {
    /** Alike, or not surveyed apart. */
    EVEN,

    /** The lanes are worse. */
    LANES_WORSE
}
