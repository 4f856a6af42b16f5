package stoneprocess.core.answer;

import stoneprocess.core.term.Term;

/** What kept a value from being the outcome, or one of them. */
public enum WhyNotKind implements Term {
    /** Needs or vetoes exclude it. */
    VETOED,

    /** It is allowed, but the rules that ask for another value carry more weight. */
    OUTWEIGHED,

    /** A rule asks for it because of something that nobody knows, and so counts for something milder. */
    UNCERTAIN,

    /** It is allowed, and no rule asked for it on this floor. */
    NOT_ASKED,

    /** It is allowed at this step; over all steps of the track another value changes less often or is wished for more. */
    OTHER_STEPS,

    /** No value met all needs and escaped all vetoes; this one was excluded with the others. */
    IMPASSE,

    /** A grit that is not on hand. */
    NOT_ON_HAND,

    /** A grit whose bond is not used on this floor. */
    BOND_LEFT_OUT,

    /** A grit before the one that the first cut starts with. */
    BEFORE_START,

    /** A grit after the last one that is aimed at. */
    AFTER_END,

    /** A grit that the path steps over: the legal path with the fewest wide jumps and grits goes without it. */
    STEPPED_OVER,

    /** No path from the first cut to the last grit leads over the grits on hand. */
    NO_PATH,

    /** A figure computed from others by formula. */
    COMPUTED
}
