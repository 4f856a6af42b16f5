package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What the divider strips of terrazzo are made of. */
public enum DividerStrips implements Term {
    /** There are none. */
    NONE,

    /** Brass. */
    BRASS,

    /** Zinc, often called white metal. */
    ZINC,

    /** Aluminium. */
    ALUMINIUM,

    /** Plastic. */
    PLASTIC
}
