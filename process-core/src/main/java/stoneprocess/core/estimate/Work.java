package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What hours are spent on. */
public enum Work implements Term {
    /** Loading, unloading, protecting the way, and the same back. */
    MOBILISATION,
    /** Masking walls and fittings along the edges. */
    MASKING,
    /** Proving the steps on a test area. */
    TEST_AREA,
    /** Fills, grout, relaying and the like, as the job names them. */
    OTHER_WORK,
    /** A step in the open field, all its passes. */
    OPEN_FIELD,
    /** The same step along the edges with a hand tool. */
    EDGES,
    /** Rinsing and picking up after a step. */
    RINSING,
    /** Changing tools, moving water and cable, cleaning the machine. */
    SETTING_UP,
    /** Going back over what did not pass the check. */
    REWORK,
    /** Letting slurry settle, and carrying water and cake to where they may go. */
    SLURRY,
    /** Laying on and wiping off a sealer. */
    SEALING,

    /** Watching the barrier while a step is worked by day. */
    BARRIER,

    /** Getting to work and leaving it clean on each day after the first. */
    DAILY,

    /** Taking the machines away before a long wait, and bringing them back. */
    COMING_BACK,

    /** Driving to the site and back on each day, outside the shift. */
    ROAD
}
