package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Passes of the grade in work beside the plan. */
public enum PassCount implements Term {
    /** Fewer than planned. */
    FEWER,

    /** As many as planned. */
    AS_PLANNED,

    /** More than planned. */
    MORE,

    /** More than twice as many as planned. */
    MANY_MORE
}
