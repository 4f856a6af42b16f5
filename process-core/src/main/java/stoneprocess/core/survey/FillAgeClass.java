package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** How far the newest grout or fill has cured. */
public enum FillAgeClass implements Term {
    /** The next grit would tear it out. */
    FRESH,

    /** It stands the next grit. */
    CURED
}
