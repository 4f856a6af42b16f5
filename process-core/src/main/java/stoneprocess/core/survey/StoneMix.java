package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether stones of different hardness lie side by side. */
public enum StoneMix implements Term {
    /** One stone, or stones cut alike. */
    ONE_HARDNESS,

    /** Hard and soft stones in one floor. */
    MIXED_HARDNESS
}
