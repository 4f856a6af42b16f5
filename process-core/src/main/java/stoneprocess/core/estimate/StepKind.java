package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What cuts or polishes in a step. */
public enum StepKind implements Term {
    METAL,
    TRANSITION,
    RESIN,
    /** Polishing powder under a plain pad. */
    POWDER
}
