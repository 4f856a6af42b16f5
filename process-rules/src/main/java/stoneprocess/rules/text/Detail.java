package stoneprocess.rules.text;

/** How much a text tells. */
public enum Detail {
    /** The first page and the plan; of safety, what stops the work at length and the rest a line each. */
    BRIEF,

    /** The same, with every safety sheet, every open question and the reasons of every decision about the floor. */
    FULL
}
