package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How firmly the stone is identified. */
public enum Identification implements Term {
    /** Name and tests contradict each other. */
    CONFLICT,

    /** Neither name nor test. */
    NOTHING,

    /** A name and no test. */
    NAME_ONLY,

    /** One of acid drop and scriber. */
    ONE_TEST,

    /** Acid drop and scriber agree, or a petrographer identified it. */
    TWO_TESTS
}
