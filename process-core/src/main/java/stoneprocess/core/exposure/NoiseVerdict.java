package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How a day's noise compares with the limits, from the mildest to the worst. */
public enum NoiseVerdict implements Term {
    /** Below the level at which a hearing programme is due. */
    BELOW_ACTION,
    /** Within the limit, but a hearing programme is due: measuring, hearing tests, protectors, training. */
    HEARING_PROGRAMME,
    /** Over the limit of the day: less noise or less time. */
    OVER_LIMIT,
    /** A level that is allowed for no time at all. */
    OVER_CEILING
}
