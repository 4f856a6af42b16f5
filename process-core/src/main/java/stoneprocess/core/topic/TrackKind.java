package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Parts of the work that run side by side. */
public enum TrackKind implements Term {
    /** The open field, by machine; where lanes are worked alone, the lanes. */
    OPEN_FIELD,

    /** Edges and corners, by hand tool. */
    EDGE,

    /** Places repaired separately. */
    LOCAL_REPAIR
}
