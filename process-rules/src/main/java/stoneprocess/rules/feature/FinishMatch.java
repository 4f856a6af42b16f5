package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The finish as it is called against what the brightest zone reads. */
public enum FinishMatch implements Term {
    /** It reads as it is called, or higher. */
    MATCHES,

    /** It reads a class lower or more. */
    READS_LOWER
}
