package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What rolls over the floor in use. */
public enum Wheels implements Term {
    /** Feet only. */
    NONE,

    /** Soft or air-filled tyres. */
    SOFT,

    /** Hard wheels: pallet trucks, forklifts with solid tyres, steel castors. */
    HARD
}
