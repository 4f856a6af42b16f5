package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What the floor lies on. */
public enum Bed implements Term {
    /** A mortar bed or a slab. */
    MORTAR,

    /** A thin adhesive bed on screed. */
    ADHESIVE,

    /** A gypsum or anhydrite screed. */
    GYPSUM_SCREED,

    /** Pedestals. */
    RAISED_ACCESS,

    /** A timber floor. */
    WOOD
}
