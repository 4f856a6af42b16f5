package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a drop of cold dilute acid does on a hidden, freshly scraped spot. The test itself etches. */
public enum AcidDrop implements Term {
    /** No fizz, on scratched powder either. */
    NO_REACTION,

    /** Fizzes on scratched powder only. */
    FIZZ_ON_POWDER,

    /** Fizzes on the solid surface. */
    FIZZ_ON_SOLID
}
