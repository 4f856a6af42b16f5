package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Departure from a 3 m straightedge. */
public enum WavinessClass implements Term {
    /** Flat enough for a single disc. */
    FLAT,

    /** Needs rigid plates. */
    WAVY
}
