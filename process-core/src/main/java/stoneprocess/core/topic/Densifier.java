package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** When a concrete slab gets a densifier. */
public enum Densifier implements Term {
    /** Never. */
    NONE,

    /** On a slab that was opened, after about 400. */
    AFTER_FINE_HONE,

    /** On a slab whose path ends at 400 or coarser, after its last grit. */
    AFTER_LAST_GRIT,

    /** On a soft slab, before the cuts, and again after about 400 or a hone's last grit, since the cuts take it off. */
    BEFORE_CUTS
}
