package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** Whether metal-bond diamonds may cut a family. */
public enum MetalBondUse implements Term {
    /** Too brittle, too weak or too thin a wearing layer. */
    EXCLUDED,

    /** Stands it where thickness and bedding do. */
    ALLOWED
}
