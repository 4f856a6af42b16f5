package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Whether the work may go ahead, from the most cautious to the boldest. */
public enum Verdict implements Term {
    /** No work that cuts; the named cause stands in the way. */
    REFUSE,

    /** Nothing is cut until the named facts are known; the plan is provisional. */
    HOLD,

    /** Cleaning and upkeep give what is wanted; nothing is cut. */
    CLEAN_ONLY,

    /** The plan may be carried out. */
    GO
}
