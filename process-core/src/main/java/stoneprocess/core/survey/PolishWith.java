package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What brings calcite stone from a fine hone to a polish. */
public enum PolishWith implements Term {
    /** Every finer diamond grit, then powder. */
    DIAMOND,

    /** Powder alone, in place of the finer diamond grits. */
    POWDER
}
