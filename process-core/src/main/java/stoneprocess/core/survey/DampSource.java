package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Where the water in a floor comes from; where there are several sources, the one furthest down. */
public enum DampSource implements Term {
    /** Looked for and not found. */
    NONE,

    /** More water than the floor takes when it is cleaned. */
    CLEANING,

    /** Rain that shoes carry in or that drives in at a door. */
    RAIN,

    /** The bed on which it was laid, which has not dried yet. */
    NEW_BED,

    /** A pipe, a drain or a roof that leaks. */
    LEAK,

    /** The ground below. */
    GROUND
}
