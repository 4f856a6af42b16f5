package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** Preparation, in the order in which it is done. */
public enum Task implements Term {
    /** Stop, keep off, and have the layer or the stone sampled by a licensed person. */
    STOP_AND_SAMPLE,

    /** Stop the cleaner that attacks the floor. */
    STOP_CLEANER,

    /** Find out whether a cleaner holds chlorine, and never let an acid one meet it. */
    PART_ACID_FROM_CHLORINE,

    /** A specialist cleans it dry and by hand. */
    CALL_SPECIALIST,

    /** Keep people from tripping over what rocks or stands proud, from today until it is mended. */
    BAR_TRIPS,

    /** Keep people from slipping, from today until wet slip has been measured. */
    GUARD_SLIPS,

    /** Agree the work with the conservator or the owner's officer. */
    CONSULT_CONSERVATOR,

    /** Test the stone on hidden spots until two tests agree. */
    TEST_STONE,

    /** Find out whether a film lies on a slab that sheds water. */
    TEST_FOR_FILM,

    /** Try stripper or solvent on a hidden piece of divider strip. */
    TRY_ON_STRIP,

    /** Try a coating of a resin-bound floor on a spot the size of a hand: dry first, then what the maker of the binder allows. */
    TRY_ON_RESIN,

    /** Try stripping and cleaning alone on a spot. */
    CLEANING_TRIAL,

    /** The trials of terrazzo in their order, each written down. */
    TERRAZZO_TRIALS,

    /** Have an engineer confirm what the floor carries. */
    CONFIRM_FLOOR_LOAD,

    /** Mark cracks of which nobody knows whether they move, and measure them before anything fills them. */
    WATCH_CRACKS,

    /** Find out whether the bed under proud edges still sinks, before anything is relaid or ground flat. */
    WATCH_SETTLEMENT,

    /** Find where moisture and salts come from. */
    FIND_MOISTURE,

    /** Have a leak mended. */
    MEND_LEAK,

    /** Remove salts dry. */
    DRY_CLEAN_SALTS,

    /** Shut the water off and dry a floor that is wet every day with moving air. */
    SHUT_OFF_AND_DRY,

    /** Survey each of several stones as a floor of its own. */
    SURVEY_APART,

    /** Get the data sheet of the agglomerate: binder, silica, heat. */
    DATA_SHEET,

    /** Mask walls, fittings and neighbouring floors. */
    MASK,

    /** Protect the machine route and finished bays. */
    PROTECT_ROUTE,

    /** Bring a hand tool for each person, since the edges take as long as the field. */
    PLAN_EDGES,

    /** Bring water for the work and the rinsing. */
    BRING_WATER,

    /** Arrange for air in and out of a room before strippers or sealers are used in it. */
    ARRANGE_FRESH_AIR,

    /** Count the grits on the van and get those that the sequence lacks. */
    COUNT_GRADES,

    /** Have a supply brought that carries the machines. */
    ARRANGE_POWER,

    /** Close the area off, with signs and barriers, and agree hours and noise. */
    CLOSE_OFF,

    /** Plan the bays from the far corner to the door, finished bays closed. */
    PLAN_BAYS,

    /** Plan what a shift or a night can hold, setting up, picking up and drying included. */
    PLAN_SHIFTS,

    /** Agree a place for water, slurry and rinsing, and who takes the slurry away. */
    PLACE_FOR_SLURRY,

    /** Switch the floor heating off and let it cool. */
    HEATING_OFF,

    /** Heat the floor, without fumes, before anything cures on it and until it has cured. */
    WARM_THE_FLOOR,

    /** Wait for frost-free weeks, or put up a heated shelter until the stone is dry. */
    SHELTER_FROM_FROST,

    /** Wait until floor, grout and fill are hard enough for the grits. */
    LET_CURE,

    /** Strip the coating and rinse. */
    STRIP_COATING,

    /** Take a film off nearly dry, with gel or poultice, where water would move salts. */
    STRIP_NEARLY_DRY,

    /** Remove a urethane or epoxy film or a curing compound, as its trial showed or with the first metal cut. */
    REMOVE_FILM,

    /** Try densifier on the test area: how much the slab takes, and whether it hardens. */
    TRY_DENSIFIER,

    /** Let the floor dry to its reference. */
    LET_DRY,

    /** Poultice the oil stains. */
    POULTICE_OIL,

    /** Poultice the organic stains. */
    POULTICE_ORGANIC,

    /** Draw rust stains with a poultice, without acid on acid-sensitive stone and without bleach. */
    POULTICE_RUST,

    /** Lift and relay the few pieces that stand proud. */
    RELAY_LIPPED,

    /** Make firm what rocks, find how far the hollow reaches, and fix it or agree to leave it. */
    FIX_HOLLOW,

    /** Fill cracks, chips and holes. */
    FILL_CRACKS,

    /** Bring divider strips that stand proud level by hand. */
    LEVEL_STRIPS,

    /** Regrout open joints. */
    REGROUT,

    /** Fill open joints of a slab with a semi-rigid filler. */
    SEMI_RIGID_JOINTS,

    /** Close open joints of a slab with an elastic sealant. */
    ELASTIC_JOINTS,

    /** Have smoke detectors and air handling looked after by whoever answers for them, while work is cut and no longer. */
    SILENCE_DETECTORS
}
