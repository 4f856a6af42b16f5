package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether grout, fill and sealer cure at a temperature. */
public enum WarmthClass implements Term {
    /** They cure late or not at all. */
    COLD,

    /** They cure. */
    WARM_ENOUGH
}
