package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How far a floor of cement has hardened. */
public enum AgeClass implements Term {
    /** Too young for grits finer than those that level it. */
    YOUNG,

    /** Too young for a polish or a hardener on a slab. */
    MATURING,

    /** Hardened. */
    OLD,

    /** Hardened, and laid while asbestos was still sold. */
    ASBESTOS_YEARS,

    /** Hardened, and laid before floors were bound by resin. */
    BEFORE_RESIN
}
