package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How slurry leaves the floor. */
public enum PickUp implements Term {
    /** Vacuum with a high-efficiency filter. */
    HEPA_VACUUM,

    /** Wet vacuum. */
    WET_VACUUM,

    /** Mop with two buckets, one of them clean. */
    TWO_BUCKETS
}
