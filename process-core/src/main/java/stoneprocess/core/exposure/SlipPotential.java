package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** How likely people are to slip, from the worst to the best (HSE). */
public enum SlipPotential implements Term {
    HIGH,
    MODERATE,
    LOW
}
