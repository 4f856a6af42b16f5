package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether a steel scriber leaves a groove in the surface. */
public enum ScriberTest implements Term {
    /** The scriber slides or leaves metal. */
    NOT_SCRATCHED,

    /** The scriber leaves a groove. */
    SCRATCHED
}
