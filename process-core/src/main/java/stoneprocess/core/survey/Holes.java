package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What is missing from the surface apart from cracks, by what it takes to close it; the commonest where there is more than one. */
public enum Holes implements Term {
    /** Nothing. */
    NONE,

    /** Broken corners and edges, pop-outs. */
    CHIPS,

    /** Pores of a millimetre or two that lie open, as in ground concrete. */
    PINHOLES,

    /** Fills that have come out, of travertine or of old repairs. */
    LOST_FILLS
}
