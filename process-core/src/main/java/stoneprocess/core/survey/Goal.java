package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What the owner wants, in the owner's words. */
public enum Goal implements Term {
    /** Better than now. */
    JUST_BETTER,

    /** A hone: matt to low sheen. */
    HONE,

    /** A satin. */
    SATIN,

    /** A semi-gloss. */
    SEMI_GLOSS,

    /** A polish. */
    POLISH,

    /** A mirror-like high gloss. */
    HIGH_GLOSS,

    /** Like a sample or another floor, given as a gloss. */
    MATCH_SAMPLE
}
