package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How much air a room holds. */
public enum RoomClass implements Term {
    /** Gas and vapour of the work fill it within minutes. */
    SMALL,

    /** It fills more slowly. */
    LARGE
}
