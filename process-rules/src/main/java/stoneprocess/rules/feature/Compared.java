package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The floor's readings beside those of the signed test area. */
public enum Compared implements Term {
    /** One of them was not read. */
    NOT_READ,

    /** Mean and lowest spot meet it, and so do the edges where the survey tells zones of them. */
    MET,

    /** The edges fall short, mean and lowest spot do not. */
    EDGES_MISSED,

    /** Mean or lowest spot falls short. */
    MISSED
}
