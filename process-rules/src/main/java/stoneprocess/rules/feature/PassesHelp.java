package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether more passes of the grade would still raise the gloss. */
public enum PassesHelp implements Term {
    /** No forecast. */
    NOT_JUDGED,

    /** Beyond what the meter resolves. */
    STILL_RAISE,

    /** No longer. */
    NO_MORE
}
