package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** The angle that was read at. */
public enum AngleFit implements Term {
    /** No usable reading. */
    NOT_READ,

    /** 60 degrees tell most. */
    FITS,

    /** 20 degrees would tell more. */
    BETTER_AT_20,

    /** 85 degrees would tell more. */
    BETTER_AT_85
}
