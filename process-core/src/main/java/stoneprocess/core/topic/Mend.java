package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What is put right. */
public enum Mend implements Term {
    /** Clean, rinse and dry the surface. */
    CLEAN_RINSE_DRY,

    /** Dress the pads until they are open. */
    DRESS_PAD,

    /** Clean the coarser grit off pads, machine and buckets. */
    CLEAN_PADS_AND_BUCKETS,

    /** Level the disc. */
    LEVEL_DISC,

    /** Walk slower. */
    WALK_SLOWER,

    /** Overlap the paths by half. */
    OVERLAP_HALF,

    /** Use more water. */
    MORE_WATER,

    /** Use less water. */
    LESS_WATER,

    /** Let the pad cool. */
    LET_PAD_COOL,

    /** The planned weight. */
    PLANNED_WEIGHT,

    /** The planned machine. */
    PLANNED_MACHINE,

    /** Finish the edges at each grit. */
    FINISH_EDGES,

    /** Let the floor dry to its reference. */
    LET_FLOOR_DRY,

    /** Trace the source of the moisture. */
    FIND_MOISTURE,

    /** Strip the coating. */
    STRIP_COATING,

    /** Take off the excess of sealer as its sheet says. */
    REMOVE_SEALER_RESIDUE,

    /** Refill, cure, and cut the fill level. */
    REFILL,

    /** Neutralise, rinse and check the pH. */
    NEUTRALISE,

    /** Use a powder that suits the stone, on a spot first. */
    CHANGE_COMPOUND,

    /** Touch up the lanes with the pad of the last grit. */
    TOUCH_UP_LANES,

    /** Leave it as it is; this is expected. */
    LEAVE_IT
}
