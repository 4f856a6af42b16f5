package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What a rule says about a topic. */
public enum ContributionKind implements Term {
    /** The outcome must lie in this set. */
    NEED,
    /** These outcomes are preferred, the best first. */
    WISH,
    /** The outcome must not lie in this set. */
    VETO
}
