package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;

/** What a price list puts a price on, with what the price is for. */
public enum PriceItem implements Term {
    /** One hour of one person by day. */
    LABOUR_HOUR,
    /** One hour of a helper by day; without a price of its own that of any person. */
    HELPER_HOUR,
    /** One set of metal pads. */
    METAL_SET,
    /** One set of transition pads. */
    TRANSITION_SET,
    /** One set of resin pads. */
    RESIN_SET,
    /** One kilogram of polishing powder. */
    POWDER_KILOGRAM,
    /** One cubic metre of water. */
    WATER_CUBIC_METRE,
    /** Taking away one cubic metre of slurry. */
    SLURRY_CUBIC_METRE,
    /** Sealer for one square metre. */
    SEALER_SQUARE_METRE,
    /** Densifier for one square metre. */
    DENSIFIER_SQUARE_METRE,
    /** Filler, grout or joint fill for one square metre of floor, each time that it is worked. */
    FILLER_SQUARE_METRE,
    /** Stripper for one square metre. */
    STRIPPER_SQUARE_METRE,
    /** One kilowatt hour. */
    ENERGY_KILOWATT_HOUR,
    /** One day of a machine that is hired, besides its hours. */
    HIRE_DAY,
    /** One day of a supply that is brought: transformer, distribution board and cable, or a generator in the open air. */
    SUPPLY_DAY,
    /** Coming and going once, besides the hours. */
    MOBILISATION,
    /** One kilometre of the vehicle; the time on the road is labour. */
    TRAVEL_KILOMETRE;

    /** One set of pads of a bond. */
    static PriceItem padSet(Bond bond) {
        return Term.parse(PriceItem.class, bond.key() + "-set", "bond");
    }
}
