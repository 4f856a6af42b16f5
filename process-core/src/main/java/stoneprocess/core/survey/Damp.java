package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** The moisture of the floor against an unworked dry reference of the same stone. */
public enum Damp implements Term {
    /** Reads as the reference does. */
    AS_DRY_REFERENCE,

    /** Reads more than the reference. */
    ABOVE_REFERENCE
}
