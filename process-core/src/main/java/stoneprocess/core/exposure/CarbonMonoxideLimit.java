package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** A limit for carbon monoxide in air. */
public enum CarbonMonoxideLimit implements Term {
    /** 200 ppm, never to be exceeded (NIOSH). */
    NIOSH_CEILING,
    /** 35 ppm, mean over 8 h (NIOSH). */
    NIOSH_MEAN,
    /** 50 ppm, mean over 8 h (29 CFR 1910.1000). */
    OSHA_MEAN
}
