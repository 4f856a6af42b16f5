package stoneprocess.core.site;

import stoneprocess.core.term.Term;

/** Why no gloss can be foretold. */
public enum NoForecast implements Term {
    /** Refused, undecided or at an impasse. */
    NO_PLAN,

    /** The plan leaves this part of the floor as it is. */
    FIELD_NOT_CUT,

    /** This part of the floor sees no resin grit. */
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
