package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How the floor was finished when it was laid. */
public enum OriginalFinish implements Term {
    /** Honed: rubbed smooth, without a mirror. */
    HONED,

    /** Polished. */
    POLISHED
}
