package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** A check on site that tells causes apart. */
public enum SiteCheck implements Term {
    /** Wipe with neutral cleaner, rinse, dry and look again. */
    WIPE_AND_DRY,

    /** Look under raking light, along and across. */
    LOW_LIGHT_TWO_WAYS,

    /** Run a fingernail across the line. */
    NAIL_ACROSS_LINE,

    /** Look at the pad's face and feel it. */
    PAD_FACE,

    /** Feel whether the pad is hot. */
    PAD_WARMTH,

    /** Make two more passes on one spot; read before and after. */
    TWO_PASSES_ON_SPOT,

    /** Cut one spot a grit coarser and work back up: do the lines go? */
    COARSER_ON_SPOT,

    /** Compare the grits and passes in the log with the plan. */
    LOG_AGAINST_PLAN,

    /** Check that the disc lies flat and runs true. */
    DISC_FLAT,

    /** Time the walk and measure the overlap over one bay. */
    WATCH_ONE_BAY,

    /** Moisture against the dry reference. */
    MOISTURE_READING,

    /** Solvent on a white rag on a hidden spot. */
    SOLVENT_RAG,

    /** pH of the rinse water. */
    PH_OF_RINSE,

    /** Look at the surface through a magnifier. */
    MAGNIFIER,

    /** Compare with the signed test area. */
    TEST_AREA_BESIDE,

    /** Compare with an untrodden corner. */
    CORNER_BESIDE,

    /** Tap the piece and probe the hole. */
    SOUND_AND_PROBE,

    /** Read more spots, in two directions. */
    READ_MORE_SPOTS,

    /** Read at the angle that shows more. */
    OTHER_ANGLE
}
