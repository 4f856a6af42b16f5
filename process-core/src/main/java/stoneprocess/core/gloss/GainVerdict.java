package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** Whether a gain is one, from the least to the most firm. */
public enum GainVerdict implements Term {
    /** A side has fewer than two readings, so its scatter is not known. */
    NOT_ENOUGH_READINGS,

    /** The gain does not stand out from the scatter and the meter; the floor may even have lost. */
    WITHIN_SCATTER,

    /** The floor has gained more than scatter and meter explain. */
    REAL
}
