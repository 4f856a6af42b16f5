package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** What local repairs do to the marks. */
public enum RepairResult implements Term {
    /** There are no local repairs. */
    NONE,

    /** The first cut clears them. */
    CLEARS,

    /** The cut that would clear them is excluded; a finer one softens them. */
    SOFTENS
}
