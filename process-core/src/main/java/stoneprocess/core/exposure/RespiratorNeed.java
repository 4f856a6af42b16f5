package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Whether a respirator is worn. */
public enum RespiratorNeed implements Term {
    /** The table asks for none. */
    NONE_BY_TABLE_1,
    /** The table asks for one with at least the stated protection factor. */
    BY_TABLE_1,
    /** The table does not answer; the employer's assessment does. */
    BY_ASSESSMENT
}
