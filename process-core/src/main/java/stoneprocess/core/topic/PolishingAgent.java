package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** The last step by powder, from the most cautious to the boldest. */
public enum PolishingAgent implements Term {
    /** None: diamond only. */
    NONE,

    /** Neutral oxide powder. */
    NEUTRAL_OXIDE,

    /** Powder with oxalic acid, for calcite. */
    OXALIC_COMPOUND,

    /** Fluorosilicate crystalliser, for calcite: a last resort. */
    CRYSTALLISER
}
