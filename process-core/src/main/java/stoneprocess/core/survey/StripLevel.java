package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How divider strips lie in the floor. */
public enum StripLevel implements Term {
    /** Level with the terrazzo. */
    FLUSH,

    /** They stand above it and a fingernail catches them. */
    PROUD
}
