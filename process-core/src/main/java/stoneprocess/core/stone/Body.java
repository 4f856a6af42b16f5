package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** What holds the floor together. */
public enum Body implements Term {
    /** Natural stone. */
    STONE,

    /** Cement-bound chips or tiles. */
    CEMENT,

    /** Resin-bound chips or resin-filled stone. */
    RESIN,

    /** A concrete slab. */
    CONCRETE,

    /** Fired clay. */
    CERAMIC
}
