package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Whether a respirator has to be worn. */
public enum RespiratorNeed implements Term {
    /** The table requires none. */
    NONE_BY_TABLE_1,
    /** The table requires one with at least the stated protection factor. */
    BY_TABLE_1,
    /** The table does not answer; the employer's assessment does. */
    BY_ASSESSMENT
}
