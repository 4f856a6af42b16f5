package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Classes of finish, from matt to mirror-like. */
public enum Finish implements Term {
    /** Matt to low sheen. */
    HONE,

    /** Satin. */
    SATIN,

    /** Semi-gloss. */
    SEMI_GLOSS,

    /** Polish. */
    POLISH,

    /** High gloss. */
    HIGH_GLOSS
}
