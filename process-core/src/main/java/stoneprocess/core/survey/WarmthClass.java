package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether grout, fill and sealer cure at a temperature. */
public enum WarmthClass implements Term {
    /** Near freezing: they do not cure, and water stays in the floor. */
    TOO_COLD,

    /** They cure late or not at all. */
    COLD,

    /** They cure. */
    WARM_ENOUGH
}
