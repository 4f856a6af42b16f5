package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How wet the floor gets in use. */
public enum WetUse implements Term {
    /** Kept dry. */
    DRY,

    /** Wet at times, walked with shoes. */
    WET_SHOD,

    /** Wet and walked barefoot. */
    WET_BAREFOOT
}
