package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** What is done against a hazard. Local codes and the role that the warning names decide. */
public enum Precaution implements Term {
    /** Water fed to the cutting face, or a collector with a filter of the share that {@code silica.filter} names or better and filter cleaning. */
    WATER_FED_OR_COLLECTOR,

    /** Indoors vacuum between passes with a high-efficiency filter. */
    VACUUM_BETWEEN_PASSES,

    /** Never sweep dry. */
    NO_DRY_SWEEPING,

    /** Bucket water on a floor machine and hand tools indoors need an assessment of their own. */
    ASSESS_OTHER_WET_WORK,

    /** Respirators come last. */
    RESPIRATOR_LAST,

    /** No abrasion and no dry work at all until a laboratory has cleared the stone. */
    NO_ABRASION_UNTIL_CLEARED,

    /** Keep off. */
    KEEP_OFF,

    /** No grinding and no dry scraping. */
    NO_GRINDING_OR_DRY_SCRAPING,

    /** Sampled, and removed or enclosed by a licensed contractor. */
    LICENSED_SAMPLING_AND_REMOVAL,

    /** Ground-fault (residual-current) protection at the outlet at every voltage, tested before each shift. */
    GROUND_FAULT_PROTECTION,

    /** Cables off the wet floor and unhurt. */
    CABLES_OFF_THE_WET,

    /** Know what else shares the circuit. */
    KNOW_THE_CIRCUIT,

    /** Close the bay with barriers. */
    CLOSE_THE_BAY,

    /** Keep the rest dry, drain or pick up. */
    KEEP_THE_REST_DRY,

    /** Shoes that grip when wet. */
    SHOES_THAT_GRIP,

    /** Signs last. */
    SIGNS_LAST,

    /** No engine and no generator indoors or at a door: electric machines. */
    NO_ENGINE_INDOORS,

    /** Open doors and fans do not guarantee safety. */
    NO_TRUST_IN_OPEN_DOORS,

    /** Outdoors away from inlets, with a worn alarm. */
    WORN_GAS_ALARM,

    /** Quieter tools and hours first. */
    QUIETER_FIRST,

    /** Then distance and turns. */
    DISTANCE_AND_TURNS,

    /** Then hearing protection. */
    HEARING_PROTECTION,

    /** Low-vibration tools with two handles and a guard. */
    LOW_VIBRATION_TOOLS,

    /** Sharp pads. */
    SHARP_PADS,

    /** Turns, breaks, warm hands. */
    TURNS_AND_BREAKS,

    /** Take the machine apart. */
    TAKE_APART,

    /** Use a ramp, a lift or a hoist. */
    RAMP_LIFT_OR_HOIST,

    /** Lift in pairs, weights last and one by one. */
    LIFT_IN_PAIRS,

    /** The mildest that does it. */
    MILDEST_PRODUCT,

    /** Fresh air. */
    FRESH_AIR,

    /** Gloves to the elbow, goggles, boots that grip. */
    LONG_GLOVES_GOGGLES_BOOTS,

    /** Never mixed with anything. */
    NEVER_MIXED,

    /** Respirator as its safety data sheet says. */
    RESPIRATOR_BY_DATA_SHEET,

    /** One kind at a time. */
    ONE_KIND_AT_A_TIME,

    /** Covered while it works. */
    COVERED_AT_WORK,

    /** No flame. */
    NO_FLAME,

    /** Gloves and eye protection. */
    GLOVES_AND_EYE_PROTECTION,

    /** A sealer in water where it serves. */
    SEALER_IN_WATER,

    /** Closed to others until it has cured. */
    CLOSED_UNTIL_CURED,

    /** Gloves, goggles, boots. */
    GLOVES_GOGGLES_BOOTS,

    /** Splashes rinsed at once. */
    RINSE_SPLASHES,

    /** Glass and metal masked. */
    MASK_GLASS_AND_METAL,

    /** Used wet, and wetted in its tub. */
    USED_WET,

    /** Eye protection. */
    EYE_PROTECTION,

    /** A dropper bottle of about a tenth strength. */
    DROPPER_BOTTLE,

    /** Gloves and goggles. */
    GLOVES_AND_GOGGLES,

    /** Water and bicarbonate at hand. */
    WATER_AND_BICARBONATE,

    /** Never poured, never heated. */
    NEVER_POURED_OR_HEATED,

    /** Pick up at once, settle. */
    PICK_UP_AND_SETTLE,

    /** Gloves and boots. */
    GLOVES_AND_BOOTS,

    /** To a sewer only with leave. */
    SEWER_ONLY_WITH_LEAVE,

    /** Waterproof gloves and boots. */
    WATERPROOF_GLOVES_AND_BOOTS,

    /** Wash at once. */
    WASH_AT_ONCE,

    /** Check pH before disposal. */
    CHECK_PH,

    /** A finish chosen for wet grip, mats, drainage. */
    FINISH_FOR_WET_GRIP,

    /** Measured before the floor opens and signed by the owner. */
    GRIP_MEASURED_AND_SIGNED,

    /** Find out the original finish. */
    FIND_THE_ORIGINAL_FINISH,

    /** The gentlest means first. */
    GENTLEST_MEANS_FIRST,

    /** A record of every step. */
    RECORD_EVERY_STEP,

    /** Load confirmed in writing. */
    LOAD_IN_WRITING,

    /** Lighter machine, weights spread out. */
    LIGHTER_MACHINE,

    /** Work when they are away. */
    WORK_WHEN_THEY_ARE_AWAY,

    /** Else barriers, a way round that stays dry, cables and hoses off it. */
    BARRIERS_AND_A_DRY_WAY,

    /** Agreed hours for noise and smell. */
    AGREED_HOURS,

    /** One person who watches the barrier. */
    WATCH_THE_BARRIER,

    /** Gloves that the resin does not pass, no bare skin. */
    GLOVES_AGAINST_RESIN,

    /** No solvent to wash hands. */
    NO_SOLVENT_ON_SKIN,

    /** Grout off the skin at once. */
    GROUT_OFF_AT_ONCE,

    /** Two people for wet electric work. */
    TWO_FOR_WET_ELECTRIC_WORK,

    /** Else a check-in by the clock and a worn alarm. */
    CHECK_IN_AND_ALARM
}
