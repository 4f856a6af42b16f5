package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What cleans a floor that is not cut, and what closes any job, in its order. */
public enum FinishTask implements Term {
    /** Vacuum loose grit off before anything wet. */
    VACUUM_GRIT,

    /** Wash with a neutral cleaner, diluted by its label, that dwells without drying. */
    WASH_AND_DWELL,

    /** Work by hand, square by square, with hardly any water. */
    CLEAN_BY_HAND,

    /** Scrub, rinse and wet-vacuum. */
    SCRUB_AND_RINSE,

    /** Rinse until the pH is that of clean water. */
    CHECK_RINSE,

    /** Neutralise and check that the pH is that of the rinse water. */
    NEUTRALISE,

    /** A hand wipe leaves nothing on the cloth. */
    HAND_WIPE,

    /** Have wet slip measured and the result signed before the floor opens. */
    MEASURE_SLIP,

    /** Seal in a closed period later, when the floor reopens before a sealer could cure. */
    SEAL_LATER,

    /** Reopen to shoes when dry, to water and furniture when cured. */
    REOPEN,

    /** Switch the floor heating on again, a few degrees a day. */
    WARM_SLOWLY,

    /** Hand over readings, photographs, chemicals, waste, slip result, open points and the care sheet. */
    HAND_OVER
}
