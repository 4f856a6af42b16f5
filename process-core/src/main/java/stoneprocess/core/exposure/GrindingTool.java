package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** A tool as Table 1 of 29 CFR 1926.1153 names it. */
public enum GrindingTool implements Term {
    /** A machine that is walked behind. */
    FLOOR_GRINDER,
    /** A tool held in the hands, for anything but mortar removal. */
    HAND_GRINDER
}
