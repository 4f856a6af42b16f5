package stoneprocess.core.follow;

import stoneprocess.core.term.Term;

/** What is to be said about an entry of the log. */
public enum NoteKind implements Term {
    /** It stands after an entry of a later moment. */
    OUT_OF_ORDER,

    /** The face was wet. */
    WET_READING,

    /** The face was not clean. */
    SOILED_READING,

    /** Read at another angle than the one that is judged. */
    OTHER_GEOMETRY,

    /** The only reading of its zone at this hold point. */
    ONE_SPOT_ONLY,

    /** Far from the others of its zone. */
    OUTLIER,

    /** More than the stone can read. */
    OVER_STONE,

    /** The plan has no such grade on this track. */
    GRADE_NOT_IN_PLAN,

    /** A planned grade before it was not worked. */
    GRADE_SKIPPED,

    /** The plan does not work this track. */
    TRACK_NOT_PLANNED,

    /** The survey has no such zone. */
    ZONE_NOT_SURVEYED,

    /** Before the first pass: the baseline. */
    BEFORE_WORK,

    /** Of a grade that was worked past. */
    EARLIER_GRADE,

    /** A later look at the zone counts instead. */
    LOOKED_AGAIN,

    /** A look at a wet or soiled face. */
    JUDGED_WET
}
