package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** The state of the surface under the meter. */
public enum FaceState implements Term {
    /** Clean and dry: the only state that tells something of the stone. */
    CLEAN_DRY,

    /** Wet or damp: the water film reads. */
    WET,

    /** Dust, slurry or residue on the surface. */
    SOILED
}
