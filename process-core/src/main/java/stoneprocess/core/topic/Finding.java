package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What the log shows. */
public enum Finding implements Term {
    /** Clean and dry, no scratch of the last grit in raking light. */
    LOOK_IS_CLEAN,

    /** The gain in gloss is more than scatter and meter explain. */
    GAIN_IS_REAL,

    /** The gain does not stand out from scatter. */
    GAIN_WITHIN_SCATTER,

    /** Single readings: whether the gain is real cannot be told. */
    GAIN_NEEDS_READINGS,

    /** The latest grit brought the largest gain so far. */
    LATEST_GAIN_LARGEST,

    /** The 20-degree geometry tells more here. */
    READ_AT_20,

    /** The 85-degree geometry tells more here. */
    READ_AT_85,

    /** Nothing has failed: the owner asked only for a better floor. */
    BETTER_IS_ENOUGH,

    /** Started too fine for the finish that is aimed at, whatever the passes. */
    STARTED_TOO_FINE,

    /** The gloss is still climbing with each pass of this grit. */
    GLOSS_STILL_CLIMBS,

    /** The floor has likely reached the finish aimed at. */
    TARGET_REACHED,

    /** More passes with this grit will likely reach the finish aimed at. */
    TARGET_BY_PASSES,

    /** A finer grit still to come will likely reach the finish aimed at. */
    TARGET_BY_FINER_GRADE,

    /** No planned grit and no number of passes reaches the finish aimed at. */
    TARGET_OUT_OF_REACH,

    /** The stone cannot reach the gloss aimed at. */
    TARGET_OVER_STONE,

    /** Fewer passes were done than planned. */
    FEWER_PASSES,

    /** Less weight or a weaker machine than planned was used. */
    WEAKER_SET_UP,

    /** The test area has not been cleared and signed. */
    TEST_AREA_NOT_SIGNED,

    /** The readings meet the signed test area. */
    MEETS_TEST_AREA,

    /** The readings fall short of the signed test area. */
    UNDER_TEST_AREA,

    /** Some zones have not been inspected. */
    ZONES_NOT_SEEN,

    /** The grit was repeated without improvement. */
    REPEATED_IN_VAIN
}
