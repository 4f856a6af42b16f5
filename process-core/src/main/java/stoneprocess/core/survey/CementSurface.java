package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How the surface of a concrete slab or of terrazzo was left or made. */
public enum CementSurface implements Term {
    /** As it was poured and struck off; never trowelled hard, never ground. */
    RAW,

    /** Trowelled by hand, never ground. */
    TROWELLED,

    /** Power-floated to a dense skin, never ground. */
    POWER_FLOATED,

    /** Cured with a compound or a cure-and-seal that is still on it, never ground. */
    CURING_COMPOUND,

    /** Ground, honed or polished before. */
    GROUND
}
