package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Weight added to the machine, from the most cautious to the boldest. */
public enum AddedWeight implements Term {
    /** None. */
    NONE,

    /** Less than usual by the share {@code weight.reduction}. */
    REDUCED,

    /** The usual weight of the class. */
    USUAL
}
