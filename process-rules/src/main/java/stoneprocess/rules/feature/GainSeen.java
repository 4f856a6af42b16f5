package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** What the latest readings gained on those before. */
public enum GainSeen implements Term {
    /** Nothing to compare. */
    NOT_COMPARED,

    /** Single readings: scatter is not known. */
    TOO_FEW_READINGS,

    /** No gain beyond scatter in some zone. */
    WITHIN_SCATTER,

    /** A real gain in every zone that was read. */
    REAL
}
