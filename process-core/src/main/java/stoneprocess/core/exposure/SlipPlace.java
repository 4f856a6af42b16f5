package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** What a floor is used for, as ANSI A326.3 names it. */
public enum SlipPlace implements Term {
    /** Inside and kept dry; measured dry. */
    INTERIOR_DRY,
    /** Inside, walked on wet. */
    INTERIOR_WET,
    /** Inside, wet with more demand: showers, pools, kitchens without grease. */
    INTERIOR_WET_PLUS,
    /** Outside. */
    EXTERIOR_WET,
    /** Where oil or grease is expected. */
    OILS_AND_GREASES
}
