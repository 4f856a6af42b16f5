package stoneprocess.core.site;

import stoneprocess.core.term.Term;

/** Why a variant has no price. */
public enum NotQuoted implements Term {
    /** Nothing is cut until questions are answered, so that nobody can promise a price. */
    HELD,

    /** The work is refused, not decided, or not what the floor allows. */
    NO_PLAN,

    /** The plan seals nothing, so there is no variant without a sealer. */
    NOT_SEALED,

    /** The plan has no local repairs. */
    NO_REPAIRS,

    /** The survey names no waves. */
    NO_WAVES,

    /** A planetary machine is on hand, not allowed here, or saves no hours. */
    NO_USE_OF_A_PLANETARY
}
