package stoneprocess.core.site;

import stoneprocess.core.term.Term;

/** Grits in three parts, by what one pass of them takes off and by the water that they need; see {@link StepFigures}. */
enum ResinClass implements Term {
    RESIN_COARSE,
    RESIN_MIDDLE,
    RESIN_FINE
}
