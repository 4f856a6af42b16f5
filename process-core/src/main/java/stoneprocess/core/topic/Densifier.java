package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** When a concrete slab gets a densifier. */
public enum Densifier implements Term {
    /** Never. */
    NONE,

    /** On a hard slab, after about 400. */
    AFTER_FINE_HONE,

    /** On a soft slab, before the cuts and again until it is refused. */
    BEFORE_CUTS
}
