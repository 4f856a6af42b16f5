package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether stripping and cleaning alone was tried on a spot, and what came of it. */
public enum CleaningTrial implements Term {
    /** No trial. */
    NOT_DONE,

    /** Cleaning alone gave what is wanted. */
    ENOUGH,

    /** Cleaning alone did not give it. */
    NOT_ENOUGH
}
