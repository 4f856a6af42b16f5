package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Places that are repaired by themselves, so that they do not decide the floor. */
public enum Repair implements Term {
    /** Cut the few deep scratches by hand through all grades. */
    LOCAL_SCRATCHES,

    /** Try powder and water by hand on the few smooth etches before any grit. */
    POWDER_FIRST,

    /** Blend the few etches at the floor's own grade. */
    LOCAL_ETCHES,

    /** Cut the few rough or pitted etches by hand through all grades. */
    DEEP_ETCHES,

    /** Lift and relay, or ease by hand, the few edges that stand proud. */
    LOCAL_LIPPAGE
}
