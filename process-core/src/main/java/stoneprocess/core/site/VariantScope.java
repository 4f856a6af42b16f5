package stoneprocess.core.site;

import stoneprocess.core.term.Term;

/** How much of a plan is done. */
public enum VariantScope implements Term {
    /** All of it. */
    AS_PLANNED,

    /** All of it but the sealer at the end. */
    UNSEALED,

    /** Preparation and local repairs alone; the open field keeps its face. */
    REPAIRS_ONLY,

    /** All of the plan for the floor as if it had no waves, which stay. */
    WAVES_LEFT,

    /** All of the plan with a planetary machine that the house hires. */
    HIRED_PLANETARY
}
