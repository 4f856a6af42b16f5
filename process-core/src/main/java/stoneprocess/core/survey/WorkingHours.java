package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** When the crew may work. */
public enum WorkingHours implements Term {
    /** By day only. */
    DAY,

    /** By night only. */
    NIGHT,

    /** At any time. */
    ANY
}
