package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** What a recommendation amounts to. */
public enum Status implements Term {
    /** There is a plan. */
    PLANNED,
    /** There is a plan, but nothing is cut until the named questions are answered. */
    PROVISIONAL,
    /** No work that cuts; the refusals name the cause. */
    REFUSED,
    /** No plan yet: it hinges on facts that nobody knows; the questions name them. */
    UNDECIDED,

    /** What is wanted and what the floor allows do not meet; there are counter-offers. */
    IMPASSE
}
