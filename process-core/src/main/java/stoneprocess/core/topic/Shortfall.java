package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What the equipment on hand costs in time or quality, against the best for this floor. */
public enum Shortfall implements Term {
    /** A single disc follows what a planetary machine would flatten. */
    NO_PLANETARY,

    /** The supply does not carry the planetary machine that the floor asks for. */
    SUPPLY_HOLDS_PLANETARY,

    /** Two buckets take longer and leave more behind than a wet vacuum. */
    NO_WET_VACUUM,

    /** Without a high-efficiency extractor nothing is worked dry. */
    NO_EXTRACTOR,

    /** A satin ends at 800, and the grits on hand end at 400. */
    NO_GRIT_FOR_SATIN,

    /** The plan uses neutral oxide powder, and there is none. */
    NO_OXIDE_POWDER,

    /** The plan draws stains with a poultice, and there is no absorbent powder for it. */
    NO_POULTICE
}
