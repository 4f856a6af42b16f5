package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** How fine a grit is, by its number. The limits are the parameters {@code grit.class}. */
public enum GritClass implements Term {
    /** It grinds. */
    COARSE,

    /** It removes the marks of grinding. */
    MEDIUM,

    /** It hones. */
    FINE,

    /** The shine comes up. */
    POLISHING,

    /** The last polish. */
    FINEST
}
