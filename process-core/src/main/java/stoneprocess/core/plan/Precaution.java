package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** What is done against a hazard. Local codes and the role that the warning names decide. */
public enum Precaution implements Term {
    /** Water fed to the cutting face, or a collector with a filter of the share that {@code silica.filter} names or better and filter cleaning. */
    WATER_FED_OR_COLLECTOR,

    /** Indoors, vacuum between passes with a high-efficiency filter. */
    VACUUM_BETWEEN_PASSES,

    /** Never sweep dry. */
    NO_DRY_SWEEPING,

    /** Have bucket water on a floor machine, and hand tools indoors, assessed separately. */
    ASSESS_OTHER_WET_WORK,

    /** Read the data sheet of the material before the first cut. */
    READ_THE_DATA_SHEET,

    /** Use respirators only where other controls fall short. */
    RESPIRATOR_LAST,

    /** Do no abrasive and no dry work at all until a laboratory has cleared the stone. */
    NO_ABRASION_UNTIL_CLEARED,

    /** Keep everyone off. */
    KEEP_OFF,

    /** Do no grinding and no dry scraping. */
    NO_GRINDING_OR_DRY_SCRAPING,

    /** Have it sampled by a licensed person, and removed or enclosed by a licensed contractor. */
    LICENSED_SAMPLING_AND_REMOVAL,

    /** Use ground-fault (residual-current) protection at the outlet at every voltage, and test it before each shift. */
    GROUND_FAULT_PROTECTION,

    /** Keep cables undamaged and off the wet floor. */
    CABLES_OFF_THE_WET,

    /** Find out what else is on the circuit. */
    KNOW_THE_CIRCUIT,

    /** Close the bay with barriers. */
    CLOSE_THE_BAY,

    /** Keep the rest of the floor dry; drain or pick up water. */
    KEEP_THE_REST_DRY,

    /** Wear shoes that grip when wet. */
    SHOES_THAT_GRIP,

    /** Add signs last, never instead of barriers. */
    SIGNS_LAST,

    /** Run no engine and no generator indoors or at a door; use electric machines. */
    NO_ENGINE_INDOORS,

    /** Open doors and fans do not guarantee safety. */
    NO_TRUST_IN_OPEN_DOORS,

    /** Outdoors, keep engines away from air inlets and wear a gas alarm. */
    WORN_GAS_ALARM,

    /** First choose quieter tools and hours. */
    QUIETER_FIRST,

    /** Then keep clear and rotate operators. */
    DISTANCE_AND_TURNS,

    /** Then wear hearing protection. */
    HEARING_PROTECTION,

    /** Use low-vibration tools with two handles and a guard. */
    LOW_VIBRATION_TOOLS,

    /** Use sharp pads. */
    SHARP_PADS,

    /** Rotate operators, rest, and keep hands warm. */
    TURNS_AND_BREAKS,

    /** Take the machine apart before lifting it. */
    TAKE_APART,

    /** Use a ramp, a lift or a hoist. */
    RAMP_LIFT_OR_HOIST,

    /** Lift in pairs; carry weights last, one at a time. */
    LIFT_IN_PAIRS,

    /** Use the mildest product that works. */
    MILDEST_PRODUCT,

    /** Ventilate the room. */
    FRESH_AIR,

    /** Wear elbow-length gloves, goggles and boots that grip. */
    LONG_GLOVES_GOGGLES_BOOTS,

    /** Never mix it with anything. */
    NEVER_MIXED,

    /** Wear the respirator that the safety data sheet requires. */
    RESPIRATOR_BY_DATA_SHEET,

    /** Use one kind at a time. */
    ONE_KIND_AT_A_TIME,

    /** Keep it covered while it dwells. */
    COVERED_AT_WORK,

    /** Keep flames away. */
    NO_FLAME,

    /** Wear gloves and eye protection. */
    GLOVES_AND_EYE_PROTECTION,

    /** Use a water-based sealer where it is suitable. */
    SEALER_IN_WATER,

    /** Keep others out until it has cured. */
    CLOSED_UNTIL_CURED,

    /** Wear gloves, goggles and boots. */
    GLOVES_GOGGLES_BOOTS,

    /** Rinse off splashes at once. */
    RINSE_SPLASHES,

    /** Mask glass and metal. */
    MASK_GLASS_AND_METAL,

    /** Use it wet, and wet it while still in its tub. */
    USED_WET,

    /** Wear eye protection. */
    EYE_PROTECTION,

    /** Use acid of about a tenth strength, from a dropper bottle. */
    DROPPER_BOTTLE,

    /** Wear gloves and goggles. */
    GLOVES_AND_GOGGLES,

    /** Keep water and bicarbonate at hand. */
    WATER_AND_BICARBONATE,

    /** Never pour it and never heat it. */
    NEVER_POURED_OR_HEATED,

    /** Pick it up at once and let it settle. */
    PICK_UP_AND_SETTLE,

    /** Wear gloves and boots. */
    GLOVES_AND_BOOTS,

    /** Discharge to a sewer only with a permit. */
    SEWER_ONLY_WITH_LEAVE,

    /** Wear waterproof gloves and boots. */
    WATERPROOF_GLOVES_AND_BOOTS,

    /** Wash it off skin at once. */
    WASH_AT_ONCE,

    /** Check the pH before disposal. */
    CHECK_PH,

    /** Choose a finish for its wet grip; provide mats and drainage. */
    FINISH_FOR_WET_GRIP,

    /** Have wet slip measured before the floor opens and signed for by the owner. */
    GRIP_MEASURED_AND_SIGNED,

    /** Establish the original finish. */
    FIND_THE_ORIGINAL_FINISH,

    /** Try the gentlest means first. */
    GENTLEST_MEANS_FIRST,

    /** Record every step. */
    RECORD_EVERY_STEP,

    /** Have the load confirmed in writing. */
    LOAD_IN_WRITING,

    /** Use a lighter machine and spread the weights out. */
    LIGHTER_MACHINE,

    /** Work while the premises are empty. */
    WORK_WHEN_THEY_ARE_AWAY,

    /** Otherwise put up barriers and keep a dry way round, clear of cables and hoses. */
    BARRIERS_AND_A_DRY_WAY,

    /** Agree hours for noise and smell. */
    AGREED_HOURS,

    /** Post one person to watch the barrier. */
    WATCH_THE_BARRIER,

    /** Wear gloves that the resin does not penetrate, and leave no skin bare. */
    GLOVES_AGAINST_RESIN,

    /** Never wash hands with solvent. */
    NO_SOLVENT_ON_SKIN,

    /** Wash grout off skin at once. */
    GROUT_OFF_AT_ONCE,

    /** Gloves that mortar does not soak. */
    WATERPROOF_GLOVES,

    /** Cement dust is alkaline. */
    MIX_WITHOUT_DUST,

    /** Have two people present for wet work with electric machines. */
    TWO_FOR_WET_ELECTRIC_WORK,

    /** Otherwise agree check-in times and wear an alarm. */
    CHECK_IN_AND_ALARM
}
