package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Passes of the grit in work beside the plan. */
public enum PassCount implements Term {
    /** Fewer than planned. */
    FEWER,

    /** As many as planned. */
    AS_PLANNED,

    /** More than planned. */
    MORE,

    /** Over {@code follow.many-more} of the most that were planned. */
    MANY_MORE
}
