package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What is looked at and measured before the next grit. */
public enum Check implements Term {
    /** Rinsed, clean and dry before anything is judged. */
    RINSED_CLEAN_DRY,

    /** No scratch of the last grit in raking light. */
    LOW_LIGHT,

    /** The aggregate that was agreed shows evenly. */
    AGGREGATE_SHOWN,

    /** At least 13 mm of terrazzo topping are left. */
    TOPPING_LEFT,

    /** Straightedge and feeler gauge after flattening, before any finer grade. */
    STRAIGHTEDGE,

    /** Edges and corners as well as the open field. */
    EDGES_TOO,

    /** Equal to the signed test area. */
    AGAINST_TEST_AREA,

    /** Against the field around: raking light does not find the repair. */
    BLENDS_IN,

    /** Wet slip measured on the test area and signed. */
    WET_SLIP,

    /** Gloss at 20 degrees, lane and edge, two directions. */
    READ_20,

    /** Gloss at 60 degrees, lane and edge, two directions. */
    READ_60,

    /** Gloss at 85 degrees, lane and edge, two directions. */
    READ_85
}
