package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether the floor already has the finish that is wanted. */
public enum FinishGap implements Term {
    /** It has it, or the owner only wants it better. */
    MET,

    /** It has a lower or another one. */
    NOT_MET
}
