package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What comes next, in the order in which one demand goes before another; later values lead further forward. */
public enum Move implements Term {
    /** Stop and ask the people named. */
    STOP_AND_ASK,

    /** What happened changes the plan: the new preparation comes first. */
    RE_PLAN,

    /** Clean, rinse, dry, look and read before anything is decided. */
    LOOK_FIRST,

    /** Mend the set-up and repeat the grit. */
    MEND_AND_REPEAT,

    /** Start again coarser than the plan did, proven on a test area first. */
    START_COARSER,

    /** Work again from the first grit of the plan. */
    BACK_TO_START,

    /** Go two grits back. */
    TWO_GRADES_BACK,

    /** Go one grit back. */
    ONE_GRADE_BACK,

    /** Give more passes with this grit. */
    MORE_PASSES,

    /** Finish the edges of this grit before the next. */
    EDGES_FIRST,

    /** Touch up the lanes of a finished floor with its last grit, feathered; the rest stays. */
    TOUCH_UP_LANES,

    /** Go on to the next grit or hold point. */
    GO_ON,

    /** The floor can be accepted against the test area. */
    ACCEPT
}
