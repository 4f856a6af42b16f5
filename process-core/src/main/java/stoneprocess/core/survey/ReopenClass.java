package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** When the floor has to open again after the last grit. */
public enum ReopenClass implements Term {
    /** Before a sealer could cure. */
    SOON,

    /** After that. */
    LATER
}
