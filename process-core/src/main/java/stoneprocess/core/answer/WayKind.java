package stoneprocess.core.answer;

import stoneprocess.core.term.Term;

/** What a search for the smallest change came to. */
public enum WayKind implements Term {
    /** It is so without any change. */
    ALREADY,

    /** One or two changes give it. */
    FOUND,

    /** No one or two changes of those that were searched give it. */
    NONE_WITHIN_TWO
}
