package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** The rule by which noise is counted. */
public enum NoiseRule implements Term {
    /** 90 dBA over 8 h, half the time for every 5 dB more (29 CFR 1910.95): the law in the United States. */
    OSHA,
    /** 85 dBA over 8 h, half the time for every 3 dB more (NIOSH 98-126): the limit that protects hearing. */
    NIOSH
}
