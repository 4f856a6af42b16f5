package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What a rule protects that holds or refuses work, the gravest first; grounds are told in this order. */
public enum Protection implements Term {
    /** The life and health of crew, occupants and those who walk on the floor later. */
    LIFE,

    /** Stone, terrazzo or historic substance that would be lost for good. */
    FABRIC,

    /** What lies under and around the floor: bed, screed, heating, building. */
    BUILDING,

    /** How the floor looks in the end. */
    LOOK,

    /** Time, money and agreement. */
    CONVENIENCE
}
