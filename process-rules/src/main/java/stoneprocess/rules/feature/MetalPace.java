package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** With which metal a floor that stands proud is cut down in the fewest likely person-hours. */
public enum MetalPace implements Term {
    /** With metal of about 50 from the start, or there is no coarser one in use. */
    USUAL,

    /** With the coarsest metal in use first. */
    COARSER
}
