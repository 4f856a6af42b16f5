package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** What a floor is used for, as ANSI A326.3 names it. */
public enum SlipPlace implements Term {
    /** Indoors and kept dry; measured dry. */
    INTERIOR_DRY,
    /** Indoors, walked on wet. */
    INTERIOR_WET,
    /** Indoors, wet, with higher demands: showers, pools, kitchens without grease. */
    INTERIOR_WET_PLUS,
    /** Outdoors. */
    EXTERIOR_WET,
    /** Where oil or grease is expected. */
    OILS_AND_GREASES
}
