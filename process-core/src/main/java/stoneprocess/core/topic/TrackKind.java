package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Parts of the work that run side by side. */
public enum TrackKind implements Term {
    /** The open field, by machine. */
    OPEN_FIELD,

    /** Edges and corners, by hand tool. */
    EDGE,

    /** Places repaired separately. */
    LOCAL_REPAIR
}
