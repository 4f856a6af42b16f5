package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What a crew waits for. */
public enum Wait implements Term {
    /** Owner's signature on the test area. */
    SIGN_OFF,
    /** Fills, grout or mortar harden. */
    CURING,
    /** The stone dries before it is sealed. */
    DRYING,
    /** The sealer cures before the floor is used. */
    SEALER_CURING
}
