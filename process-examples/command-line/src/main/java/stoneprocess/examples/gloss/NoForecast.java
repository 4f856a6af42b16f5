package stoneprocess.examples.gloss;

/** Why no gloss can be foretold. */
public enum NoForecast {
    /** Refused, undecided or at an impasse. */
    NO_PLAN,

    /** The plan leaves the open field as it is. */
    FIELD_NOT_CUT,

    /** The open field sees no resin grit. */
    NO_RESIN_GRIT,

    /** Talc, gypsum and their like: no final values are listed. */
    SOFT,

    /** Tile and slab from a factory. */
    MACHINE_MADE,

    /** What it may be differs in hardness or kind. */
    UNKNOWN_STONE,

    /** Hard and soft stones lie side by side. */
    MIXED
}
