package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** A kind of tool in Table 1 of 29 CFR 1926.1153. */
public enum GrindingTool implements Term {
    /** A walk-behind machine. */
    FLOOR_GRINDER,
    /** A hand-held tool used for anything but mortar removal. */
    HAND_GRINDER
}
