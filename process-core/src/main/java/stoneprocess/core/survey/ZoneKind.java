package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** Parts of a floor that wear differently. */
public enum ZoneKind implements Term {
    /** Where people walk. */
    LANE,

    /** Away from the lanes. */
    FIELD,

    /** Along walls and fittings. */
    EDGE,

    /** At doors to the outside. */
    ENTRANCE,

    /** Treads and landings. */
    STAIR;

    /** True for lanes and entrances. */
    public boolean isTrodden() {
        return this == LANE || this == ENTRANCE;
    }
}
