package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How much air a room holds. */
public enum RoomClass implements Term {
    /** It fills with what work gives off within minutes. */
    SMALL,

    /** It fills more slowly. */
    LARGE
}
