package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** Rock-forming minerals whose refractive indices are listed. */
public enum Mineral implements Term {
    /** Calcite. */
    CALCITE,

    /** Dolomite. */
    DOLOMITE,

    /** Quartz. */
    QUARTZ,

    /** Antigorite. */
    ANTIGORITE,

    /** Orthoclase. */
    ORTHOCLASE,

    /** Albite. */
    ALBITE,

    /** Labradorite. */
    LABRADORITE,

    /** Muscovite. */
    MUSCOVITE,

    /** Biotite. */
    BIOTITE,

    /** Augite. */
    AUGITE,

    /** Gypsum. */
    GYPSUM
}
