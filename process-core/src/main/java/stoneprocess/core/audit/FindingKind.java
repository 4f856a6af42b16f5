package stoneprocess.core.audit;

import stoneprocess.core.term.Term;

/** What may be wrong with a rule, a topic or a number. */
public enum FindingKind implements Term {
    /** A rule whose conditions can never all hold. */
    NEVER_FIRES,

    /** A rule that fires and changes no outcome in any combination of its topic's facts. */
    ALWAYS_OUTWEIGHED,

    /** Two rules that fire on the same combinations and say the same. */
    DUPLICATE,

    /** A rule that fires only where another fires that says the same. */
    SUBSUMED,

    /** Exclusions that together leave no value, while no rule demands any and no card says what would release them. */
    GAP,

    /** A demand that other rules exclude, while no card says what would release it or that practice differs. */
    UNDECLARED_CONFLICT,

    /** A value of a topic that no combination of its facts gives. */
    UNREACHABLE_VALUE,

    /** A topic that cannot be closed, with nothing to offer but to leave the floor as it is. */
    IMPASSE_WITHOUT_OFFER,

    /** A card that says something that is not so, or no longer. */
    STALE_CARD,

    /** A number that nothing reads. */
    UNUSED_PARAMETER,

    /** A question of the survey form, or a kind of damage, that no rule reads. */
    UNREAD_FIELD,

    /** A rule that is more than flat conditions and one contribution. */
    FORBIDDEN_SHAPE,

    /** A rule that reads what its own or a later stage concludes, so that the order of rules could matter. */
    READS_OWN_STAGE
}
