package stoneprocess.core.source;

import stoneprocess.core.term.Term;

/** What sort of publication a source is. */
public enum SourceKind implements Term {
    REGULATION,
    STANDARD,
    HANDBOOK,
    GUIDANCE,
    STUDY,
    ARTICLE,
    PRACTICE
}
