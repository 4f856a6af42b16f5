package stoneprocess.core.tool;

import stoneprocess.core.term.Term;

/** What holds the diamonds of a tool, in the order of the work. */
public enum Bond implements Term {
    /** Sintered metal: grinding. */
    METAL,

    /** Hybrid or ceramic: removes the marks of metal. */
    TRANSITION,

    /** Resin: honing and polishing. */
    RESIN
}
