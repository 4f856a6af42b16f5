package stoneprocess.core.tool;

import stoneprocess.core.term.Term;

/** Powders and compounds of the trade, by what they do. */
public enum Powder implements Term {
    /** Oxide of tin or aluminium, worked with water alone. */
    NEUTRAL_OXIDE,

    /** Powder with oxalic acid, for calcite. */
    OXALIC_COMPOUND,

    /** Fluorosilicate crystalliser, for calcite. */
    CRYSTALLISER,

    /** Absorbent powder from which a poultice is mixed. */
    POULTICE
}
