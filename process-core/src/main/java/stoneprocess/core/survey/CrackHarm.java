package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Whether cracks and chips do harm. */
public enum CrackHarm implements Term {
    /** Nobody trips over them, no water gets in, and they do not grow. */
    HARMLESS,

    /** They trip people, let water in or grow. */
    HARMFUL
}
