package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** How hard a floor is to cut, by the Mohs scale. */
public enum Hardness implements Term {
    /** Mohs up to about 2.5, such as talc rock and gypsum. */
    SOFT,

    /** A steel scriber scratches it: marble, limestone, cement-bound floors. */
    MEDIUM,

    /** A steel scriber does not scratch it: granite, quartzite, porcelain. */
    HARD
}
