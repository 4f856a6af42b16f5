package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Where slurry water may go by its pH alone. No class ends in a storm drain: nothing but rain goes there. */
public enum SlurryClass implements Term {
    /** Corrosive waste by its acid. */
    CORROSIVE_ACID,
    /** Too acid for a sewer. */
    TOO_ACID_FOR_SEWER,
    /** Its pH alone forbids no sewer: settle the solids out first, and ask the local authority, which often sets more. */
    SEWER_BY_LEAVE_ONLY,
    /** Corrosive waste by its alkali, as fresh concrete slurry can be. */
    CORROSIVE_ALKALI
}
