package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** What was read on clean, dry stone against the most that the stone can give at that angle. */
public enum CeilingMatch implements Term {
    /** No higher than it can give. */
    WITHIN,

    /** Higher than it can give, whatever stone it may be. */
    OVER
}
