package stoneprocess.rules.space;

import stoneprocess.core.term.Term;

/** Kinds of drawn surveys. */
public enum SurveyKind implements Term {
    /** Any answers that are accepted. */
    VALID,

    /** Measured answers lie exactly where a class begins, or at an end of what is accepted. */
    BOUNDARY,

    /** Measured answers lie one step of their precision before where a class begins. */
    NEAR_MISS
}
