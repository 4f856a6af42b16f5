package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** The face of the pads. */
public enum PadLook implements Term {
    /** Diamonds stand free and feel sharp. */
    OPEN,

    /** Glazed or clogged. */
    CLOSED
}
