package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What a reader of an estimate has to know. */
public enum Remark implements Term {
    /** Low adds all low figures and high all high ones, so the true spread is likely narrower. */
    ENDS_ARE_ADDED,
    /** The abrasion resistance is a purchase minimum for new stone, no fact about this floor. */
    ABRASION_RESISTANCE_IS_A_PURCHASE_MINIMUM,
    /** The rate at the edges is one for all stones and grades. */
    EDGES_ARE_NOT_SCALED,
    /** Cutting faster than the parameter allows for was cut back to it. */
    WALKING_SPEED_IS_CAPPED,
    /** The way the machine is walked and common practice give other rates, and no named cause explains it. */
    ROUTES_DISAGREE,
    /** A working day has one shift and every day is a working day. */
    EVERY_DAY_IS_A_WORKING_DAY
}
