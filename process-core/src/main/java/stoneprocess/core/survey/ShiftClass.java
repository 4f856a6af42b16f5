package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How long the crew works in one go. */
public enum ShiftClass implements Term {
    /** Setting up, picking up and drying take a good part of it. */
    SHORT,

    /** A usual working day. */
    FULL
}
