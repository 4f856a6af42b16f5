package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What a reader of an estimate has to know. */
public enum Remark implements Term {
    /** Low adds all low figures and high all high ones, so the true spread is likely narrower. */
    ENDS_ARE_ADDED,
    /** What is put on and thrown away is not counted; sealer, densifier, fillers and stripper go by the area. */
    MATERIALS_ARE_NOT_COUNTED,

    /** Hours and shifts are those of one crew; several share the shifts. */
    MORE_CREWS_SHORTEN_THE_DAYS
}
