package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Whether a circuit carries what hangs on it for hours. */
public enum CircuitVerdict implements Term {
    WITHIN_LIMIT,
    OVER_LIMIT
}
