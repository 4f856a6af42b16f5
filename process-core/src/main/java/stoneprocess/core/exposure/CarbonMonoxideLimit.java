package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** A limit of carbon monoxide in air. */
public enum CarbonMonoxideLimit implements Term {
    /** 200 ppm, at no moment more (NIOSH). */
    NIOSH_CEILING,
    /** 35 ppm, mean over 8 h (NIOSH). */
    NIOSH_MEAN,
    /** 50 ppm, mean over 8 h (29 CFR 1910.1000). */
    OSHA_MEAN
}
