package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Who is asked. */
public enum Ask implements Term {
    /** The owner. */
    OWNER,

    /** Whoever surveyed the floor. */
    SURVEYOR,

    /** The conservator or the owner's officer. */
    CONSERVATOR,

    /** The structural engineer. */
    ENGINEER,

    /** A laboratory, through a licensed surveyor. */
    LABORATORY,

    /** The occupational hygienist; in an emergency the emergency services. */
    HYGIENIST,

    /** The floor layer who relays and fixes the pieces. */
    LAYER,

    /** The authority for drains and waste. */
    WATER_AUTHORITY
}
