package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How the work of a step is done. */
public enum Handling implements Term {
    /** Second passes at right angles to the first. */
    CROSS_HATCH,

    /** Each path overlaps the last by half. */
    HALF_OVERLAP,

    /** A slow, even walk. */
    SLOW_WALK,

    /** The film of water never dries out. */
    NEVER_DRY,

    /** Move the machine without splashing. */
    NO_SPLASH,

    /** Slurry in the colour of the stone shows that the pads cut. */
    WATCH_SLURRY,

    /** Paste: add water and pick up. */
    ADD_WATER_TO_PASTE,

    /** The extractor runs, its filter is cleaned, and the floor is vacuumed between passes. */
    COLLECTOR_RUNS,

    /** Resin burns: keep the tool moving and the water coming. */
    KEEP_COOL,

    /** A pad set and a clean bucket of its own for each grit. */
    CLEAN_PADS_AND_BUCKET,

    /** Feather the coarse cut of the edge, or each cut of lanes worked alone, into the field. */
    FEATHER_EDGES,

    /** Soft bond on a hard slab, hard bond on a soft one. */
    BOND_BY_SLAB,

    /** Stairs from the top down; nosings keep their grip. */
    TOP_DOWN,

    /** Grout the pits that the cut opened and let the grout cure before the next grit. */
    REGROUT_PITS,

    /** Finish the edges of this grit before the next. */
    EDGES_FIRST
}
