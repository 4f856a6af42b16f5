package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How well hands hold a load (NIOSH 94-110). */
public enum Coupling implements Term {
    /** Handles or hand-hold cut-outs, or a loose part that the hand wraps round. */
    GOOD,
    /** Handles that are less than good, or fingers bent at a right angle under the load. */
    FAIR,
    /** Bulky, hard to hold, sharp-edged or sagging. */
    POOR
}
