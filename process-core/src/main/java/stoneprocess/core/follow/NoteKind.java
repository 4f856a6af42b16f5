package stoneprocess.core.follow;

import stoneprocess.core.term.Term;

/** What is to be said about an entry of the log. */
public enum NoteKind implements Term {
    /** It stands after an entry of a later moment. */
    OUT_OF_ORDER,

    /** The surface was wet. */
    WET_READING,

    /** The surface was not clean. */
    SOILED_READING,

    /** Read at an angle other than the one judged. */
    OTHER_GEOMETRY,

    /** The only reading of its zone at this hold point. */
    ONE_SPOT_ONLY,

    /** Far from the other readings of its zone. */
    OUTLIER,

    /** Higher than the stone can read. */
    OVER_STONE,

    /** The plan has no such grit on this track. */
    GRADE_NOT_IN_PLAN,

    /** A planned grit before it was not worked. */
    GRADE_SKIPPED,

    /** The plan has no work on this track. */
    TRACK_NOT_PLANNED,

    /** The survey has no such zone. */
    ZONE_NOT_SURVEYED,

    /** Before the first pass: the baseline. */
    BEFORE_WORK,

    /** From a grit that has since been followed by another. */
    EARLIER_GRADE,

    /** A later look at the zone counts instead. */
    LOOKED_AGAIN,

    /** The surface was wet or soiled when it was judged. */
    JUDGED_WET
}
