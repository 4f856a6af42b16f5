package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether the gloss is still climbing with more passes of the grit. */
public enum PassesHelp implements Term {
    /** No forecast. */
    NOT_JUDGED,

    /** Beyond what the meter resolves. */
    STILL_CLIMBS,

    /** No longer. */
    NO_MORE
}
