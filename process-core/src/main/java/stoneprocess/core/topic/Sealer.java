package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Protection, from the most cautious to the boldest. */
public enum Sealer implements Term {
    /** None. */
    NONE,

    /** A penetrating sealer without a film. */
    IMPREGNATOR
}
