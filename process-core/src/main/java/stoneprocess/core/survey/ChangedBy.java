package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/**
 * Who can change a fact about a floor. Finding out what nobody knows yet is no change in this sense; a fact that nobody
 * can change may still be looked at again.
 */
public enum ChangedBy implements Term {
    /** The owner decides it: the wish, the hours, who is about, the way in. */
    OWNER,

    /** The crew brings it, strips it, dries it, fills it or relays it. */
    CREW,

    /** Somebody else has to grant or confirm it: an officer, an engineer, a petrographer. */
    OTHERS,

    /** It is what it is: the stone, its thickness, its damage, its history. */
    NOBODY;

    /** True when people can change it. */
    public boolean byPeople() {
        return this != NOBODY;
    }
}
