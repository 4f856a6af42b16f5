package stoneprocess.core.source;

import stoneprocess.core.term.Term;

/** How firmly a statement is known. */
public enum EvidenceGrade implements Term {
    /** Published, and read in the publication or a reprint. */
    PUBLISHED,
    /** Published, known through somebody who quotes it, or the trade press reporting contractors' experience. */
    SECOND_HAND,
    /** What seasoned restorers do; no source. A default that can be overridden. */
    COMMON_PRACTICE,
    /** A publication that is named from memory, or figures that are; check before relying on them. */
    MEMORY
}
