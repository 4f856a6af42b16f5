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
    STAIR,

    /** A slope that is walked or wheeled. */
    RAMP,

    /** The top of a kitchen, bar or wash-stand: no floor, and not planned as one. */
    WORKTOP,

    /** Cladding of a wall: no floor, and not planned as one. */
    WALL;

    /** False for a worktop and a wall. */
    public boolean isFloor() {
        return this != WORKTOP && this != WALL;
    }

    /** True for lanes and entrances. */
    public boolean isTrodden() {
        return this == LANE || this == ENTRANCE;
    }
}
