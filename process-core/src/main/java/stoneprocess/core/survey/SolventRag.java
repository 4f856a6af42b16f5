package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a white cloth with solvent picks up. */
public enum SolventRag implements Term {
    /** Nothing. */
    CLEAN,

    /** A coating or wax. */
    FILM,

    /** Colour or oil from the stone: dyed or oiled. */
    COLOUR
}
