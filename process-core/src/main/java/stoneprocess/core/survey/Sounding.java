package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What tapping and treading say about the bond to the bed. */
public enum Sounding implements Term {
    /** Full sound, nothing moves. */
    SOUND,

    /** Hollow in places, nothing moves. */
    HOLLOW,

    /** Pieces rock or move. */
    LOOSE
}
