package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How much stone may be taken off in the life of the floor, against what the damage would take. */
public enum BudgetClass implements Term {
    /** A hone that starts fine. */
    TINY,

    /** A hone; no grinding. */
    SMALL,

    /** Grinding is possible. */
    AMPLE
}
