package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Whether a transition bond removes the marks of metal. */
public enum TransitionUse implements Term {
    /** Between metal and resin, where the sequence in use has one. */
    USE,

    /** Resin follows metal. */
    SKIP
}
