package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Whether a task meets Table 1 of 29 CFR 1926.1153. */
public enum SilicaVerdict implements Term {
    /** The control is listed in the table and complete. */
    TABLE_1_MET,
    /** Water is used in a way that the table does not list: the employer's own assessment is needed. */
    OWN_ASSESSMENT_NEEDED,
    /** Dry grinding, and the table's control is missing or incomplete: do not start. */
    TABLE_1_NOT_MET
}
