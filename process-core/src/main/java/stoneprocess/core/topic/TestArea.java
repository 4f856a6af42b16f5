package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Whether a test area is cut and signed before the floor. */
public enum TestArea implements Term {
    /** 1 to 4 m2 with edge and lane, one grit finer first, coarser until it clears; signed by the owner. */
    REQUIRED,

    /** Nothing is cut. */
    NOT_NEEDED
}
