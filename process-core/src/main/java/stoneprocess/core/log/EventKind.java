package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** Something that happened on the job and may change the plan. */
public enum EventKind implements Term {
    /** A fill has come out. */
    FILL_OUT,

    /** A piece has moved or sounds loose. */
    TILE_MOVED,

    /** A stain has appeared. */
    STAIN,

    /** A crack has appeared. */
    CRACK,

    /** An edge has turned damp. */
    DAMP_EDGE,

    /** The surface flakes or powders. */
    FLAKING,

    /** Salts have bloomed. */
    SALTS,

    /** More aggregate shows than was agreed. */
    AGGREGATE_SHOWS,

    /** An unknown layer, adhesive or fibrous material has come to light. */
    UNKNOWN_LAYER,

    /** Edges were left out at a grit. */
    EDGES_SKIPPED,

    /** Pads were changed within a grit, and the new ones not yet felt for coarse grit and run in. */
    PAD_CHANGED,

    /** Slurry has escaped. */
    SLURRY_ESCAPED,

    /** A carbon-monoxide alarm has sounded or somebody has felt unwell. */
    ALARM
}
