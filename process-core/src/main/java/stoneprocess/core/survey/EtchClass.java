package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What acid left on acid-sensitive stone. */
public enum EtchClass implements Term {
    /** No etch. */
    NONE,

    /** Duller, smooth to the finger. */
    GLOSS_LOST,

    /** Rough to the finger. */
    ROUGH,

    /** Pitted. */
    PITTED
}
