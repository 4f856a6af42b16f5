package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How a machine reaches the floor. */
public enum Access implements Term {
    /** Rolled in. */
    LEVEL,

    /** By lift. */
    LIFT,

    /** Only over stairs. */
    STAIRS
}
