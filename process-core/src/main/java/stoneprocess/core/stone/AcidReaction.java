package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** How a stone answers a drop of cold dilute hydrochloric acid (about 10 %). */
public enum AcidReaction implements Term {
    /** No fizz, on powder either. */
    NONE,

    /** Fizzes only as scratched powder, as dolomite does. */
    SLOW,

    /** Fizzes on the solid face, as calcite does. */
    STRONG
}
