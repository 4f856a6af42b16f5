package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Stages of the programs, in the order in which one may read what another decided. */
public enum Stage implements Term {
    /** What the stone is. */
    SURVEY,

    /** Whether, after what preparation, with what bonds and to what finish. */
    GO_NO_GO,

    /** How coarse to start. */
    FIRST_CUT,

    /** What the job log shows. */
    REVIEW,

    /** What may lie behind the signs of a fault. */
    SIGNS,

    /** What comes next on the job. */
    NEXT,

    /** Which grits follow. */
    SEQUENCE,

    /** Machine and added weight for each grit. */
    EQUIPMENT,

    /** Water, passes, checks and slurry. */
    WATER_AND_PASSES,

    /** Last step, protection and upkeep. */
    FINISHING,

    /** What is missing on hand, and warnings. */
    SAFETY
}
