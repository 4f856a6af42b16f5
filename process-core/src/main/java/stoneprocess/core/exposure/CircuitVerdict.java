package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Whether a circuit carries its load for hours. */
public enum CircuitVerdict implements Term {
    WITHIN_LIMIT,
    OVER_LIMIT
}
