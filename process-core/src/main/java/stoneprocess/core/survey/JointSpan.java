package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How wide the joints between pieces are. */
public enum JointSpan implements Term {
    /** Filled without sand. */
    NARROW,

    /** Wide enough that the grout holds sand. */
    SANDED,

    /** Wide enough that a higher edge is accepted of new work. */
    WIDE
}
