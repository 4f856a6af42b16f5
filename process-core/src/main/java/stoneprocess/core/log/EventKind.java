package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** Something that happened on the job and may change the plan. */
public enum EventKind implements Term {
    /** A fill came out. */
    FILL_OUT,

    /** A piece moved or sounds loose. */
    TILE_MOVED,

    /** A stain appeared. */
    STAIN,

    /** A crack appeared. */
    CRACK,

    /** An edge turned damp. */
    DAMP_EDGE,

    /** The face flakes or powders. */
    FLAKING,

    /** Salts bloomed. */
    SALTS,

    /** More aggregate shows than was agreed. */
    AGGREGATE_SHOWS,

    /** An unknown layer, adhesive or fibrous stuff came to light. */
    UNKNOWN_LAYER,

    /** Edges were left out at a grade. */
    EDGES_SKIPPED,

    /** Pads were changed within a grade, and the new ones not yet felt for coarse grit and run in. */
    PAD_CHANGED,

    /** Slurry ran where it must not. */
    SLURRY_ESCAPED,

    /** A carbon-monoxide alarm sounded or somebody felt unwell. */
    ALARM
}
