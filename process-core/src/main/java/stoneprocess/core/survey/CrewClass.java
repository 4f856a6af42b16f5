package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How many work together. */
public enum CrewClass implements Term {
    /** One person. */
    ALONE,

    /** Two or more. */
    SEVERAL
}
