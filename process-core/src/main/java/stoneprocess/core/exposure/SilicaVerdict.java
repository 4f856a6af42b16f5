package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Where a task stands against Table 1 of 29 CFR 1926.1153. */
public enum SilicaVerdict implements Term {
    /** The control is one of the table's, in full. */
    TABLE_1_MET,
    /** Water is used in a way that the table does not list: the employer's own assessment is needed. */
    OWN_ASSESSMENT_NEEDED,
    /** Dry, and the table's control is not there or not in full: do not start. */
    TABLE_1_NOT_MET
}
