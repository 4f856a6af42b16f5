package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What tapping and treading say about the bond to the bed. */
public enum Sounding implements Term {
    /** Full sound, nothing moves. */
    SOUND,

    /** A few pieces sound hollow, nothing moves; at most one piece of the floor in twenty, all others are sound. */
    FEW_HOLLOW,

    /** A few pieces rock or move; at most one piece of the floor in twenty, all others are firm. */
    FEW_LOOSE,

    /** Hollow in places, nothing moves. */
    HOLLOW,

    /** Pieces rock or move. */
    LOOSE
}
