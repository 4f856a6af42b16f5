package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a laboratory said about fibrous minerals. */
public enum LaboratoryResult implements Term {
    /** No sample was taken. */
    NOT_SAMPLED,

    /** Fibrous minerals were found. */
    FIBRES_FOUND,

    /** None were found. */
    FREE_OF_FIBRES
}
