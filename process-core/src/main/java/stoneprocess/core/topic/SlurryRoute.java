package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Where slurry goes. */
public enum SlurryRoute implements Term {
    /** Collected and settled. */
    COLLECT_AND_SETTLE,

    /** Floor drains are covered. */
    COVER_DRAINS,

    /** Nothing to a storm drain. */
    NOTHING_TO_STORM_DRAIN,

    /** Outdoors the low side is dammed, everything wet is picked up, and what cannot be caught is not used. */
    CATCH_ALL_OUTDOORS,

    /** Its pH is checked and it is dealt with as local rules say. */
    CHECK_PH
}
