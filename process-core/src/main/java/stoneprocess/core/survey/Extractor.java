package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Dust extraction on hand. */
public enum Extractor implements Term {
    /** None. */
    NONE,

    /** A vacuum without a high-efficiency filter. */
    VACUUM,

    /** An extractor with a filter of 99 % or better and filter cleaning. */
    HEPA
}
