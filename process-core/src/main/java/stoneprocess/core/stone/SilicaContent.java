package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** Crystalline silica by mass. */
public enum SilicaContent implements Term {
    /** Up to about 5 %; not free of it. */
    LOW,

    /** About 20 to 70 %. */
    MEDIUM,

    /** Over 70 %. */
    HIGH
}
