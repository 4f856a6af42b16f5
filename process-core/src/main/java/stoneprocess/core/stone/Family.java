package stoneprocess.core.stone;

import stoneprocess.core.term.Term;

/** Families of floor material that the rules tell apart. */
public enum Family implements Term {
    /** Marble of calcite. */
    CALCITE_MARBLE,

    /** Marble of dolomite. */
    DOLOMITE_MARBLE,

    /** Limestone, dense or porous. */
    LIMESTONE,

    /** Travertine, filled or open. */
    TRAVERTINE,

    /** Banded calcite sold as onyx. */
    ONYX,

    /** Granite, gneiss and their like. */
    GRANITE,

    /** Dark igneous stone, often sold as black granite. */
    BASALT_GABBRO,

    /** True quartzite. */
    QUARTZITE,

    /** Sandstone. */
    SANDSTONE,

    /** Slate. */
    SLATE,

    /** Serpentine, often sold as green marble. */
    SERPENTINE,

    /** Soapstone and other talc rock. */
    SOAPSTONE,

    /** Gypsum and alabaster. */
    GYPSUM,

    /** Tuff and coral stone. */
    TUFF,

    /** Magnesite floor. */
    MAGNESITE,

    /** Encaustic cement tile with a thin colour layer. */
    ENCAUSTIC_CEMENT,

    /** Breccia and resined slab. */
    BRECCIA,

    /** Chips in a cement matrix. */
    CEMENT_TERRAZZO,

    /** Chips in a resin matrix. */
    RESIN_TERRAZZO,

    /** Quartz in resin. */
    ENGINEERED_QUARTZ,

    /** Marble chips in resin. */
    ENGINEERED_MARBLE,

    /** Concrete slab. */
    CONCRETE,

    /** Porcelain tile. */
    PORCELAIN,

    /** Brick and quarry tile. */
    BRICK;

    /** True for what is made of chips or pieces, each of which may be of another stone than the rest. */
    public boolean isOfChips() {
        return this == BRECCIA || this == CEMENT_TERRAZZO || this == RESIN_TERRAZZO || this == ENGINEERED_MARBLE;
    }
}
