package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** Whether the floor was started too fine, by its readings. */
public enum StartFit implements Term {
    /** Nothing says so. */
    NOT_SHOWN,

    /** Old damage likely keeps it under what is aimed at. */
    TOO_FINE
}
