package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What carries the floor. */
public enum Structure implements Term {
    /** The ground. */
    ON_GROUND,

    /** A slab over another storey. */
    SUSPENDED
}
