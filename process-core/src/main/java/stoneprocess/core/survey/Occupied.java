package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether people other than the crew are about during the work. */
public enum Occupied implements Term {
    /** Nobody else. */
    NO,

    /** Other people. */
    YES
}
