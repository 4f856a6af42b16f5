package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a floor is confirmed to carry. */
public enum LoadClass implements Term {
    /** As dwellings and lofts: no heavy machine. */
    LIGHT,

    /** As halls and shops. */
    ORDINARY
}
