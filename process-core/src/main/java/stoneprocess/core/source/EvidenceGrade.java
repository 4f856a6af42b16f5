package stoneprocess.core.source;

import stoneprocess.core.term.Term;

/** How firmly a statement is known. */
public enum EvidenceGrade implements Term {
    /** Published, and read in the publication or a reprint; author or body, title, year and clause are known. */
    PUBLISHED,
    /** Published, but known through somebody who quotes it, or without the author, year or clause to find it by. */
    SECOND_HAND,
    /** What seasoned restorers do; no source. A default that can be overridden. */
    COMMON_PRACTICE,
    /** A publication that is named from memory, or figures that are; check before relying on them. */
    MEMORY
}
