package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** The state of the surface when it was read. */
public enum SurfaceState implements Term {
    /** Clean and dry. */
    CLEAN_DRY,

    /** Wet or damp. */
    WET,

    /** Not cleaned. */
    SOILED
}
