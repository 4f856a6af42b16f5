package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** How a floor compares with its signed test area. */
public enum AcceptanceVerdict implements Term {
    /** Every demand is met. */
    ACCEPTED,

    /** What was read meets the demands, but something is not read. */
    INCOMPLETE,

    /** At least one demand is not met. */
    REFUSED
}
