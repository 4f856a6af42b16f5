package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How the name of the stone was come by. */
public enum IdentifiedBy implements Term {
    /** An invoice, a label or hearsay. */
    INVOICE,

    /** Somebody who knows stone looked at it. */
    LOOK,

    /** A petrographer identified a sample. */
    PETROGRAPHER
}
