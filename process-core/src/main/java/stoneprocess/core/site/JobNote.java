package stoneprocess.core.site;

import stoneprocess.core.term.Term;

/** What a reader of a job made from a plan has to know. */
public enum JobNote implements Term {
    /** Nothing is cut until the questions of the plan are answered. */
    PLAN_IS_PROVISIONAL,

    /** Nobody gave the length of the edges: from that of a square of the floor's area up, by {@code estimate.outline}. */
    EDGES_FROM_AREA,

    /** No edges were given for a floor that is worked by hand throughout: the hours go by its area. */
    HAND_WORK_BY_AREA,

    /** Stairs count with the floor's area and are cut by hand too; their treads are not in the length of the edges. */
    STAIRS_ARE_NOT_IN_THE_EDGES,

    /** The plan has no edge work, so the edges take no hours. */
    NO_EDGE_WORK,

    /** The stone may be hard or softer: it is reckoned as hard. */
    STONE_MAY_BE_HARD,

    /** The places that are repaired are as large as the survey says. */
    REPAIRS_BY_SURVEY,

    /** Nobody measured the places of local repairs: from none up to the share at which they would govern the floor. */
    REPAIRS_BY_LIMIT,

    /** Nobody told how large the places are that are filled, poulticed or relaid: they are reckoned as usual. */
    REPAIRS_AS_USUAL,

    /** Hand work has hours, but no pads, water, slurry and energy. */
    HAND_WORK_USES_UP_MORE,

    /** Polishing powder is reckoned with the usual passes and the water of the finest grits. */
    POWDER_AS_USUAL,

    /** The survey names fewer people than one machine's crew, and there are wet steps. */
    CREW_IS_SMALLER,

    /** The survey names more people than one machine's crew. */
    CREW_IS_LARGER,

    /** A reading, not a time, ends a wait, so the calendar leaves it out. */
    A_READING_ENDS_A_WAIT,

    /** The floor is told to be colder than fills, grout and sealer need to cure, and the plan does not warm it. */
    COLD_FLOOR,

    /** The building manager isolates the smoke detectors and restores them; it takes the crew no hours. */
    DETECTORS_BY_OTHERS,

    /** Others may be in the building by day; one person more watches the barrier while the floor is cut. */
    ONE_AT_THE_BARRIER,

    /** On a small job the owner signs the test area on the spot. */
    SIGNED_ON_THE_SPOT,

    /** What cures in places of its own waits beside other places and the test area; other waits follow one another. */
    WAITS_MAY_OVERLAP,

    /** The floor opens before a sealer cures, so that it is sealed later, on a visit of its own. */
    SEALED_LATER,

    /** Drying, sealing and curing may take longer than the time after which the floor opens again. */
    OPENS_BEFORE_CURED
}
