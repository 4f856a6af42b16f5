package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Machine and weight beside the plan. */
public enum SetUpUse implements Term {
    /** As planned, or heavier. */
    AS_PLANNED,

    /** Less weight. */
    LIGHTER,

    /** A machine that cuts less. */
    WEAKER_MACHINE
}
