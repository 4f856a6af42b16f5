package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** The cause of a fault. */
public enum Fault implements Term {
    /** Slurry, cleaner or dust left on the surface. */
    RESIDUE,

    /** Wax, water or another film on the surface. */
    FILM,

    /** A glazed pad rubs and does not cut. */
    GLAZED_PAD,

    /** The pad floats on too much water. */
    FLOODED_PAD,

    /** Too little water for the pad. */
    TOO_LITTLE_WATER,

    /** A pad run dry or hot. */
    DRY_OR_HOT_PAD,

    /** Carried grit: grains of a coarser grit. */
    CARRIED_GRIT,

    /** Scratches left by an earlier grit. */
    OLD_SCRATCHES,

    /** A grit was skipped or cut short. */
    SKIPPED_GRADE,

    /** The first cut was too fine for the damage. */
    STARTED_TOO_FINE,

    /** The disc does not lie flat. */
    TILTED_DISC,

    /** The machine walks too fast. */
    FAST_WALK,

    /** Paths overlap too little. */
    LITTLE_OVERLAP,

    /** Edges did not get every grit. */
    EDGES_UNTOUCHED,

    /** Traffic wore the lanes. */
    TRAFFIC_WEAR,

    /** Powder was overworked or ran hot. */
    OVERHEATED_POWDER,

    /** The powder does not suit the stone. */
    WRONG_COMPOUND,

    /** Metal that was too coarse for a weak stone. */
    METAL_TOO_COARSE,

    /** Fill came out. */
    FILL_LOST,

    /** Open pores of the stone. */
    OPEN_STRUCTURE,

    /** A coating left on the surface. */
    COATING_LEFT,

    /** Excess sealer left on the surface. */
    SEALER_RESIDUE,

    /** An acid or a harsh cleaner etched the surface. */
    ETCH,

    /** Moisture in the stone or its bed. */
    MOISTURE,

    /** Salts that break the surface. */
    SALTS,

    /** The limit of the stone. */
    STONE_LIMIT,

    /** An expected contrast: parts that polish differently by nature. */
    EXPECTED_CONTRAST
}
