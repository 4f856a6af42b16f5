package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** What can be seen, heard or felt of a fault. */
public enum Sign implements Term {
    /** Single lines across an even scratch pattern. */
    STRAY_SCRATCHES,

    /** Curls and arcs, often in bands. */
    SWIRLS,

    /** Bands along the walking direction. */
    STRIPES,

    /** A shine with a rippled surface. */
    ORANGE_PEEL,

    /** Small holes. */
    PITS,

    /** Streaks of pad resin. */
    RESIN_SMEARS,

    /** Lanes duller than the edges. */
    DULL_LANES,

    /** Edges duller than the lanes. */
    DULL_EDGES,

    /** Borders around bays or pieces, most on dark stone. */
    FRAMES,

    /** A milky veil over the shine. */
    HAZE,

    /** Darker or duller bands along joints. */
    HALO_AT_JOINTS,

    /** Duller since it was sealed. */
    DULL_AFTER_SEALING,

    /** Duller since it was cleaned. */
    DULL_AFTER_CLEANING,

    /** The matrix duller than the chips. */
    DULL_MATRIX,

    /** The surface flakes or powders. */
    FLAKES,

    /** Gloss that no longer rises with passes. */
    STALLED_GLOSS,

    /** A low sheen after the last grits, with no line to be seen. */
    LOW_WITHOUT_LINES,

    /** A pad that squeals in clear water. */
    SQUEAL,

    /** Slurry as thick as paste. */
    PASTE,

    /** Coloured streaks behind the pad, or a smell of burning. */
    COLOURED_STREAKS
}
