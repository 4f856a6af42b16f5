package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The latest gain beside the gains before it. */
public enum GainOrder implements Term {
    /** Fewer than two gains. */
    NOT_COMPARED,

    /** The largest so far. */
    LARGEST,

    /** Not the largest. */
    NOT_LARGEST
}
