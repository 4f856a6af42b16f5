package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** The cause of a fault. */
public enum Fault implements Term {
    /** Slurry, cleaner or dust left on the face. */
    RESIDUE,

    /** Wax, water or another film on the face. */
    FILM,

    /** A closed pad rubs and does not cut. */
    GLAZED_PAD,

    /** The pad floats on too much water. */
    FLOODED_PAD,

    /** Too little water for the pad. */
    TOO_LITTLE_WATER,

    /** A pad run dry or hot. */
    DRY_OR_HOT_PAD,

    /** Grit carried over from a coarser grade. */
    CARRIED_GRIT,

    /** Scratches that an earlier grade left. */
    OLD_SCRATCHES,

    /** A grade was skipped or cut short. */
    SKIPPED_GRADE,

    /** The first cut was too fine for the damage. */
    STARTED_TOO_FINE,

    /** The disc does not lie flat. */
    TILTED_DISC,

    /** The machine walks too fast. */
    FAST_WALK,

    /** Paths overlap too little. */
    LITTLE_OVERLAP,

    /** Edges did not get every grade. */
    EDGES_UNTOUCHED,

    /** Traffic wore the lanes. */
    TRAFFIC_WEAR,

    /** Powder was overworked or ran hot. */
    OVERHEATED_POWDER,

    /** The powder does not suit the stone. */
    WRONG_COMPOUND,

    /** Metal too coarse for a weak stone. */
    METAL_TOO_COARSE,

    /** Fill came out. */
    FILL_LOST,

    /** Pores of the stone itself. */
    OPEN_STRUCTURE,

    /** Coating left on the face. */
    COATING_LEFT,

    /** Sealer left on the face. */
    SEALER_RESIDUE,

    /** An acid or a harsh cleaner etched the face. */
    ETCH,

    /** Moisture in stone or bed. */
    MOISTURE,

    /** Salts that break the face. */
    SALTS,

    /** The stone gives no more. */
    STONE_LIMIT,

    /** Parts that polish differently by nature. */
    EXPECTED_CONTRAST
}
