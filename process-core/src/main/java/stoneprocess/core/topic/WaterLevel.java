package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Water on the floor, from the most cautious for the stone to the boldest. */
public enum WaterLevel implements Term {
    /** None: the grade is worked dry. */
    NONE,

    /** As little as keeps dust down and the pad running. */
    SCANT,

    /** The usual amount. */
    MODERATE,

    /** A little more than usual. */
    GENEROUS
}
