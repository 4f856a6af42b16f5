package stoneprocess.rules.feature;

import stoneprocess.core.term.Term;

/** What the circuit carries continuously. */
public enum SupplyClass implements Term {
    /** Too weak for any floor machine. */
    TOO_WEAK,

    /** A household outlet at 120 V. */
    LIGHT,

    /** A household outlet at 230 V or a stronger one at 120 V. */
    STANDARD,

    /** A supply for heavy machines. */
    STRONG
}
