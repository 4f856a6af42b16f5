package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How the floor was treated last, before it wore. */
public enum LastTreatment implements Term {
    /** Never since it was laid. */
    NONE,

    /** Honed or polished with diamond. */
    DIAMOND,

    /** Polished with powder. */
    POWDER,

    /** Crystallised. */
    CRYSTALLISER,

    /** Coated. */
    COATING
}
