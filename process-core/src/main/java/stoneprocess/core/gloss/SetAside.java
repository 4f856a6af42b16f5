package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.term.Term;

/**
 * A reading that is not used, and why.
 *
 * @param reading the reading
 * @param reason why it is not used
 */
public record SetAside(Reading reading, Reason reason) {
    public SetAside {
        Refuse.nulls(SetAside.class, reading, reason);
    }

    /** Why a reading is not used; the first that holds counts. */
    public enum Reason implements Term {
        /** The surface was wet. */
        WET,

        /** The surface was not clean. */
        SOILED,

        /** It was read at another angle than the others. */
        OTHER_GEOMETRY
    }
}
