package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How much the floor is walked on. */
public enum Traffic implements Term {
    /** A home or a quiet room. */
    LIGHT,

    /** An office or a small shop. */
    MODERATE,

    /** A lobby, a station or a mall. */
    HEAVY
}
