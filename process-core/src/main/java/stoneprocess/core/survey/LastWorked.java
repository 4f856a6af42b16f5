package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** The tool and grit at which somebody left off, where a job was begun and not finished. */
public enum LastWorked implements Term {
    /** No job was left unfinished. */
    NOTHING_LEFT_OFF,

    /** Metal of any grit. */
    METAL,

    /** Resin or transition up to 200. */
    COARSE_RESIN,

    /** Resin of 400 or finer. */
    FINE_RESIN
}
