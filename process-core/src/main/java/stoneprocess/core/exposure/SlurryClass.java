package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Where slurry water may go by its pH alone. No class permits a storm drain: only rain goes there. */
public enum SlurryClass implements Term {
    /** Corrosive waste because it is acid. */
    CORROSIVE_ACID,
    /** Too acid for a sewer. */
    TOO_ACID_FOR_SEWER,
    /**
     * The pH alone does not forbid a sewer: settle the solids first and ask the local authority, which often sets more.
     */
    SEWER_BY_LEAVE_ONLY,
    /** Corrosive waste because it is alkaline, as fresh concrete slurry can be. */
    CORROSIVE_ALKALI
}
