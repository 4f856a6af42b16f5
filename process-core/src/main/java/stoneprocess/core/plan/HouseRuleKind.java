package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** What a house changes in the shipped rulebase. */
public enum HouseRuleKind implements Term {
    /** A rule that never fires. */
    SWITCHED_OFF,
    /** A parameter with another value. */
    RETUNED
}
