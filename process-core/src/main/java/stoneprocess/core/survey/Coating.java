package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What lies on the surface. */
public enum Coating implements Term {
    /** Nothing. */
    NONE,

    /** A penetrating sealer, no film. */
    IMPREGNATOR,

    /** Wax. */
    WAX,

    /** An acrylic floor finish. */
    ACRYLIC,

    /** A urethane film. */
    URETHANE,

    /** An epoxy film. */
    EPOXY,

    /** A crystallised layer. */
    CRYSTALLISED
}
