package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/**
 * The colour of the chips or pieces of which a terrazzo, a breccia or an agglomerate is made, looked at wet and by
 * daylight; one green chip counts before all others.
 */
public enum ChipColour implements Term {
    /** White, cream, yellow or pink, as of marble. */
    PALE,

    /** Red, brown, grey or black, and none of them green. */
    COLOURED,

    /** Glass, shell or metal, of any colour; no stone but pale or coloured beside it. */
    GLASS,

    /** One chip or more that is green. */
    GREEN
}
