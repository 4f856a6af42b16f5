package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Places that are repaired separately, so that they do not decide the floor. */
public enum Repair implements Term {
    /** Cut the few deep scratches by hand through all grits. */
    LOCAL_SCRATCHES,

    /** Powder and water by hand on the few etches: alone on smooth ones, after the hand grits on rough ones. */
    POWDER_FIRST,

    /** Try powder and water on the test area before any grit, where a polish has lost its gloss all over. */
    POWDER_ON_THE_FIELD,

    /** Blend the few etches at the floor's own grit. */
    LOCAL_ETCHES,

    /** Cut the few rough or pitted etches by hand through all grits. */
    DEEP_ETCHES,

    /** Lift and relay, or ease by hand, the few edges that stand proud. */
    LOCAL_LIPPAGE
}
