package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Where a day's noise stands, from the mildest to the worst. */
public enum NoiseVerdict implements Term {
    /** Under the level from which hearing has to be looked after. */
    BELOW_ACTION,
    /** Within the limit, but hearing has to be looked after: measuring, hearing tests, protectors, training. */
    HEARING_PROGRAMME,
    /** Over the limit of the day: less noise or less time. */
    OVER_LIMIT,
    /** A level that is allowed for no time at all. */
    OVER_CEILING
}
