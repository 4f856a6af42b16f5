package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** The highest finish that a family takes from grinding and polishing. */
public enum FinishReach implements Term {
    /** Is not ground at all by a floor crew. */
    NEVER_GROUND,

    /** Does not polish; a hone is its end. */
    HONE,

    /** Too porous for more than a satin. */
    SATIN,

    /** Takes a polish. */
    POLISH
}
