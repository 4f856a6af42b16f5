package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How good a grip the load offers (NIOSH 94-110). */
public enum Coupling implements Term {
    /** Handles or hand-hold cut-outs, or a loose part that the hand wraps round. */
    GOOD,
    /** Poorer handles, or fingers bent at a right angle under the load. */
    FAIR,
    /** Bulky, hard to hold, sharp-edged or sagging. */
    POOR
}
