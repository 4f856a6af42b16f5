package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether the floor is level. */
public enum Slope implements Term {
    /** Level, or with a fall for drainage only. */
    LEVEL,

    /** A ramp or another marked slope. */
    SLOPED
}
