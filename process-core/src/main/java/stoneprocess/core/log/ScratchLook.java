package stoneprocess.core.log;

import stoneprocess.core.term.Term;

/** Which scratches show on a clean, dry surface in raking light, from none to the oldest. */
public enum ScratchLook implements Term {
    /** None. */
    NONE,

    /** The even lay of the grit just worked: what that grit leaves. */
    OF_THIS_GRADE,

    /** Scratches of the grit before. */
    OF_THE_LAST,

    /** Scratches older than the grit before. */
    OLDER
}
