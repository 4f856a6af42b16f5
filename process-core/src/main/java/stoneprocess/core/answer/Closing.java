package stoneprocess.core.answer;

import stoneprocess.core.term.Term;

/** How a matter ended. */
public enum Closing implements Term {
    /** With values, or with none where none is called for. */
    DECIDED,

    /** Without a value that meets all needs. */
    IMPASSE,

    /** The plan did not come to it. */
    NOT_REACHED
}
