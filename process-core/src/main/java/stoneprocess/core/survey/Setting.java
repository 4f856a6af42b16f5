package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether the floor is in a building. */
public enum Setting implements Term {
    /** In a building or another enclosed place. */
    INDOORS,

    /** In the open. */
    OUTDOORS
}
