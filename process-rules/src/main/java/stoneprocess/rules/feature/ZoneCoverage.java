package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How much of the floor was looked at since it was worked last. */
public enum ZoneCoverage implements Term {
    /** Every zone. */
    ALL,

    /** Not every zone. */
    SOME,

    /** None. */
    NONE
}
