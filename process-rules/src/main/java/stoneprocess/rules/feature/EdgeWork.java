package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How far the edges have come beside the field. */
public enum EdgeWork implements Term {
    /** As far as the field. */
    UP_TO_FIELD,

    /** A planned grit of the edges is still to be worked before the field goes on. */
    BEHIND_FIELD
}
