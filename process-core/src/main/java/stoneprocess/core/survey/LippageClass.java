package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Height of one edge over its neighbour. */
public enum LippageClass implements Term {
    /** Within what is accepted of new work. */
    NONE,

    /** Can be honed over with a warning on edges. */
    SLIGHT,

    /** Is ground for semi-gloss and above. */
    MODERATE,

    /** Is ground, or lifted and relaid. */
    HIGH
}
