package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Loss of finish without lines. */
public enum WearClass implements Term {
    /** As bright as in a corner that nobody treads. */
    NONE,

    /** Duller, with no line in raking light. */
    DULL
}
