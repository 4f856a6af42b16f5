package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** Which scratches show on a clean, dry face in low-angle light, from none to the oldest. */
public enum ScratchLook implements Term {
    /** None. */
    NONE,

    /** The even lay of the grade just worked: what that grade leaves. */
    OF_THIS_GRADE,

    /** Scratches of the grade before. */
    OF_THE_LAST,

    /** Scratches older than the grade before. */
    OLDER
}
