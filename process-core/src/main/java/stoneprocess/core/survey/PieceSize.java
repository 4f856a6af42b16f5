package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How large the pieces of a floor are, by their longest edge. */
public enum PieceSize implements Term {
    /** Small enough to tilt under a pad. */
    MOSAIC,

    /** Neither mosaic nor large. */
    USUAL,

    /** Large enough to be bowed, and to break when it is lifted. */
    LARGE
}
