package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How a fact about a floor is found out. */
public enum HowFound implements Term {
    /** Ask the owner or the building manager. */
    ASK,

    /** Look, in low-angle light where it concerns the face. */
    LOOK,

    /** Fingernail, then the edge of a coin. */
    TOUCH,

    /** Measure with a rule, a gauge or a straightedge. */
    MEASURE,

    /** Tap and tread, and listen. */
    TAP,

    /** Acid drop on a hidden, freshly scraped spot. */
    ACID,

    /** Steel scriber on a hidden spot. */
    SCRIBER,

    /** Water drop, five to ten minutes. */
    WATER,

    /** White cloth with solvent on a hidden spot. */
    SOLVENT,

    /** Gloss meter or moisture meter. */
    METER,

    /** Drawings, or lift one piece. */
    DRAWINGS,

    /** Sample to a laboratory, taken by a person licensed for it. */
    LABORATORY,

    /** Ask a structural engineer. */
    ENGINEER,

    /** Try it on a small spot. */
    TRIAL,

    /** Look at what is on the van. */
    COUNT
}
