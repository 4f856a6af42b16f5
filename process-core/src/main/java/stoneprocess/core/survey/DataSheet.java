package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What the data sheet of an agglomerate says of its crystalline silica. */
public enum DataSheet implements Term {
    /** There is none to be had. */
    NONE,

    /** About a tenth or more, as in quartz bound with resin. */
    HIGH_SILICA,

    /** Less than that, as in marble bound with resin. */
    LOW_SILICA
}
