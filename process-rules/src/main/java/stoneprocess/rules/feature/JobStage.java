package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How far the job has come. */
public enum JobStage implements Term {
    /** No pass is logged. */
    NOT_STARTED,

    /** A grit is worked and others are to come. */
    UNDER_WAY,

    /** The last grit of the plan is worked. */
    LAST_GRADE
}
