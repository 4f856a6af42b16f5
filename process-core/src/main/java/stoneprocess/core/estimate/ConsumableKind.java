package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What is used up, and what is left over. */
public enum ConsumableKind implements Term {
    /** Wear of a set of pads; 100 % is one set. */
    PAD_WEAR,
    /** Sets of pads to have at hand, whole. */
    PAD_SETS,
    /** Polishing powder. */
    POWDER,
    /** Water for the passes and for rinsing. */
    WATER,
    /** Slurry to take away: the water that is picked up, and the stone in it. */
    SLURRY,
    /** Stone and powder in the slurry, dry. */
    SOLIDS,
    /** Electric energy of machine and wet vacuum. */
    ENERGY
}
