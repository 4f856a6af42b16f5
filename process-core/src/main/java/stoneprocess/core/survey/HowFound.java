package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How a fact about a floor is found out. */
public enum HowFound implements Term {
    /** Ask the owner or the building manager. */
    ASK,

    /** Look, in raking light where it concerns the surface. */
    LOOK,

    /** Fingernail, then the edge of a coin. */
    TOUCH,

    /** Measure with a rule, a gauge or a straightedge. */
    MEASURE,

    /** Tap, walk over it and listen. */
    TAP,

    /** Acid drop on a hidden, freshly scraped spot. */
    ACID,

    /** Use a steel scriber on a hidden spot. */
    SCRIBER,

    /** Leave a water drop for five to ten minutes. */
    WATER,

    /** Try a drop of water before and after a hidden spot is scraped or rubbed with 80 grit. */
    SCRAPE,

    /** Rub a hidden spot with solvent on a white cloth. */
    SOLVENT,

    /** Gloss meter or moisture meter. */
    METER,

    /** Read a surface thermometer in the coldest corner early in the morning, or an air thermometer by night. */
    THERMOMETER,

    /** Check the drawings, or lift one piece. */
    DRAWINGS,

    /** Sample to a laboratory, taken by a person licensed for it. */
    LABORATORY,

    /** Have a slip tester measure it wet. */
    SLIP_TESTER,

    /** Ask a structural engineer. */
    ENGINEER,

    /** Try it on a small spot. */
    TRIAL,

    /** Check the van. */
    COUNT
}
