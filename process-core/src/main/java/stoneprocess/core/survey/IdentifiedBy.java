package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Where the name of the stone comes from. */
public enum IdentifiedBy implements Term {
    /** An invoice, a label or hearsay. */
    INVOICE,

    /** Somebody who knows stone looked at it. */
    LOOK,

    /** A petrographer identified a sample. */
    PETROGRAPHER
}
