package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** How much water a family stands during the work. */
public enum WaterTolerance implements Term {
    /** Water dissolves or destroys it. */
    NONE,

    /** Rusts, spalls, warps or dries very slowly: as little as the work allows. */
    LITTLE,

    /** Stands wet work. */
    NORMAL
}
