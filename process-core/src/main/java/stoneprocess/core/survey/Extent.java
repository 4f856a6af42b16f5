package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How much of a floor the owner wants worked. */
public enum Extent implements Term {
    /** All of it. */
    WHOLE_FLOOR,

    /** Lanes and entrances alone, feathered out; the rest and the edges stay as they are. */
    LANES_ALONE
}
