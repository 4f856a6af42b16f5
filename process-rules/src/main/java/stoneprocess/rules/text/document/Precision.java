package stoneprocess.rules.text.document;

/** How exactly a measured value is printed. */
public enum Precision {
    /** As the reader's units print it, to two or three digits. */
    USUAL,

    /** The same without its unit, for a column. */
    NUMBER,

    /** The unit alone, for the words after a column; nothing for a count. */
    UNIT,

    /** Every digit, in the unit in which it is kept. */
    EXACT,

    /** What was given or is a limit: to five digits, in the units of exposure. */
    GIVEN,

    /** A result of which less is safer to promise: to three digits, a mass to one decimal at most, rounded down, in the units of exposure. */
    AT_MOST,

    /** A result of which more is safer to expect: to three digits, a mass to one decimal at most, rounded up, in the units of exposure. */
    AT_LEAST,

    /** The rated power of an engine, to two digits, which US readers know in horsepower. */
    ENGINE
}
