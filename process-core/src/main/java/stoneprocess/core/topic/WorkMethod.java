package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How a bond is worked, from the most cautious to the boldest. */
public enum WorkMethod implements Term {
    /** With water. */
    WET,

    /** Dry, with an extractor at the tool. */
    DRY
}
