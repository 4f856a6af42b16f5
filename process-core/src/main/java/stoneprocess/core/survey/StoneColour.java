package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/**
 * The colour of the ground of the stone; needles and silky veins count before any colour, and what is made of chips is
 * judged by {@link ChipColour}.
 */
public enum StoneColour implements Term {
    /** White, cream, beige, pale pink or pale grey. */
    PALE,

    /** Speckled or strongly veined, neither pale nor dark on the whole, and nothing green in it. */
    MIXED,

    /** Black, dark grey or dark brown. */
    DARK,

    /** Green, of any shade; so is terrazzo with green chips. */
    GREEN,

    /** Of any colour, with needles, silky veins or shimmering leaves. */
    FIBROUS
}
