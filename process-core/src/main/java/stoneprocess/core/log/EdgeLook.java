package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** How the edges and corners look beside the field. */
public enum EdgeLook implements Term {
    /** Like the field. */
    AS_FIELD,

    /** Duller or rougher than the field. */
    BEHIND
}
