package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** Whether a family may hold fibrous minerals, such as chrysotile. */
public enum FibreRisk implements Term {
    /** Not known for them. */
    NONE,

    /** Only a laboratory can tell. */
    POSSIBLE
}
