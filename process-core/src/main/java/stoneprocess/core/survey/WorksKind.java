package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What the work counts as, for the regulations. */
public enum WorksKind implements Term {
    /** Restoration by a contractor: construction rules. */
    CONSTRUCTION,

    /** Upkeep by the house's own people: general-industry rules. */
    FACILITY_MAINTENANCE
}
