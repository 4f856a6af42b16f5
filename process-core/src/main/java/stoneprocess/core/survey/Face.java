package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How the surface of the floor was laid. */
public enum Face implements Term {
    /** Sawn, ground or polished flat. */
    FLAT,

    /** Small pieces set by hand. */
    MOSAIC,

    /** Split, left uneven on purpose. */
    CLEFT,

    /** Glazed or printed. */
    GLAZED
}
