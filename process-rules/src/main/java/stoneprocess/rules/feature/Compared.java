package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The floor's readings beside those of the signed test area. */
public enum Compared implements Term {
    /** One of them was not read. */
    NOT_READ,

    /** Mean, lowest spot and edges meet it. */
    MET,

    /** One of them falls short. */
    MISSED
}
