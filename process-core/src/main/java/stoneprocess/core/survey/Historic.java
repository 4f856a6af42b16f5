package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether the floor is protected or historic fabric. */
public enum Historic implements Term {
    /** It is not. */
    NO,

    /** It is. */
    YES
}
