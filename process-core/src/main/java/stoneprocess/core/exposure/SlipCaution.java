package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How far a slip class holds. */
public enum SlipCaution implements Term {
    /** Level floor and straight walking: slopes, turns, pushing and running need more. */
    LEVEL_AND_STRAIGHT_WALKING_ONLY,
    /** Clean water only: roughness alone does not answer for grease, soap or dust. */
    CLEAN_WATER_ONLY,
    /** A clean laboratory specimen as new: wear and upkeep change the floor. */
    SPECIMEN_AS_NEW,
    /** Meeting the limit does not mean that nobody slips: use, slope, drainage and upkeep count. */
    MEETING_IT_IS_NO_PROMISE
}
