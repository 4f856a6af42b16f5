package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The test area. */
public enum TrialState implements Term {
    /** The plan has none. */
    NOT_NEEDED,

    /** Not tried yet. */
    NOT_TRIED,

    /** A try finer than the plan's start did not clear it. */
    FINER_NOT_CLEARED,

    /** The plan's own start, or a coarser one, did not clear it. */
    START_NOT_CLEARED,

    /** More was cut than was needed. */
    TOO_MUCH,

    /** Cleared and not signed. */
    NOT_SIGNED,

    /** Cleared and signed by the owner. */
    SIGNED
}
