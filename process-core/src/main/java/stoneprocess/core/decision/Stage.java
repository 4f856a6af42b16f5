package stoneprocess.core.decision;

import stoneprocess.core.term.Term;

/** Stages of the three programs. Within a program they only run forward. */
public enum Stage implements Term {
    /** What the stone is. */
    SURVEY,

    /** Whether, after what preparation, with what bonds and to what finish. */
    GO_NO_GO,

    /** How coarse to start. */
    FIRST_CUT,

    /** Which grades follow. */
    SEQUENCE,

    /** Machine and added weight for each grade. */
    EQUIPMENT,

    /** Water, passes, checks and slurry. */
    WATER_AND_PASSES,

    /** Last step, protection and upkeep. */
    FINISHING,

    /** Warnings. */
    SAFETY,

    /** What the job log shows; the first stage of following up. */
    REVIEW,

    /** What a fault looks like; the first stage of a diagnosis. */
    SIGNS
}
