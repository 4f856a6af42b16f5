package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Water on the floor, from the most cautious for the stone to the boldest. */
public enum WaterLevel implements Term {
    /** None: the grit is worked dry. */
    NONE,

    /** A thin film, just enough to keep the pad wet. */
    SCANT,

    /** A closed film. */
    MODERATE,

    /** Plenty, without puddles. */
    GENEROUS
}
