package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** What a calculation can say of an engine indoors. There is no value for "cleared": none exists. */
public enum EngineVerdict implements Term {
    /** The computed limits are not reached, which clears nothing. */
    NOT_CLEARED,
    /** The mean over 8 h is above a limit. */
    OVER_MEAN,
    /** The ceiling is exceeded. */
    OVER_CEILING
}
