package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** When the floor has to be handed over. */
public enum DeadlineClass implements Term {
    /** Before new grout could be relied on. */
    WITHIN_A_CURE,

    /** After that. */
    LATER
}
