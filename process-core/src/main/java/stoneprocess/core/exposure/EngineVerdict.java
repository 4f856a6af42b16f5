package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** What a calculation can say about an engine indoors. There is no value for "cleared", on purpose. */
public enum EngineVerdict implements Term {
    /** The computed concentrations are below the limits, which does not clear the engine. */
    NOT_CLEARED,
    /** The mean over 8 h is above a limit. */
    OVER_MEAN,
    /** The ceiling is exceeded. */
    OVER_CEILING
}
