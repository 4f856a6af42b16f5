package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What is glued to the back of the stone. */
public enum Backing implements Term {
    /** Nothing. */
    NONE,

    /** A resin coat. */
    RESIN,

    /** A mesh in resin. */
    MESH
}
