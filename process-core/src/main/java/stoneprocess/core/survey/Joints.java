package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** The state of the joints. */
public enum Joints implements Term {
    /** Filled and sound. */
    FULL,

    /** Missing or crumbling filler. */
    OPEN
}
