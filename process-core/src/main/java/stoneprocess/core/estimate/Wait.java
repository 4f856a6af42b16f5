package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What a crew waits for. */
public enum Wait implements Term {
    /** What was put on the test area dries and cures, so that its slip can be measured and the owner can judge it. */
    TEST_AREA,
    /** Owner's signature on the test area. */
    SIGN_OFF,
    /** Fills, grout or mortar harden. */
    CURING,
    /** The stone dries before it is sealed. */
    DRYING,
    /** The sealer cures before the floor is used. */
    SEALER_CURING
}
