package stoneprocess.rules.text;

/** How much a text tells. */
public enum Detail {
    /** The plan, and the three questions that matter most. */
    BRIEF,
    /** The same, with every question and the reasons of every decision about the floor. */
    FULL
}
