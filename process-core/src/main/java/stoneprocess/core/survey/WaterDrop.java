package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a drop of water does in five to ten minutes. */
public enum WaterDrop implements Term {
    /** The surface stays as it is. */
    NOT_DARKENED,

    /** Darkens within minutes. */
    DARKENS_SLOWLY,

    /** Darkens at once. */
    DARKENS_AT_ONCE
}
