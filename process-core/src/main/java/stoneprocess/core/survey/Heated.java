package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether the floor is heated. */
public enum Heated implements Term {
    /** No heating in the floor. */
    NO,

    /** Heating pipes or mats in the floor. */
    YES
}
