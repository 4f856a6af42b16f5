package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** What is left of the causes of the signs seen. */
public enum CausesFound implements Term {
    /** No sign was seen. */
    NO_SIGN,

    /** At least one cause stands. */
    NAMED,

    /** What is known rules out every cause that the signs suggest. */
    NONE_LEFT
}
