package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What the owner accepts before the start. */
public enum Acceptance implements Term {
    /** Nobody named a finish; the plan assumes the most modest. */
    FINISH_IS_ASSUMED,

    /** No: slabs do not become one sheet; joints stay seen, and what is not worn keeps the polish of the works. */
    JOINTS_STAY_SEEN,

    /** The sample that the owner named is the finish, and is read before any other is assumed. */
    SAMPLE_IS_THE_FINISH,

    /** A sealer does not stop etching. */
    SEALER_STOPS_NO_ETCHING,

    /** Deep stains and fills may remain visible. */
    STAINS_MAY_STAY,

    /** Edges and parts of unlike hardness differ in gloss. */
    EDGES_AND_VEINS_DIFFER,

    /** Grinding and honing change colour, edges and slip resistance. */
    CUT_CHANGES_LOOK,

    /** A factory polish may not be matched on site. */
    FACTORY_POLISH_MAY_NOT_BE_MATCHED,

    /** Grinding opens pits that need grout. */
    PITS_MAY_OPEN,

    /** Slight lippage stays and shows in raking light. */
    LIPPAGE_EDGES_STAY,

    /** How flat the floor is left is agreed by a standard, as laid or as ground. */
    FLATNESS_IS_AGREED,

    /** The finish lasts only as the upkeep allows. */
    UPKEEP_DECIDES,

    /** Large pieces may be bowed, and break when they are lifted. */
    LARGE_PIECES,

    /** Joints that hold sand stay matt beside a polish. */
    SANDED_JOINTS,

    /** Moisture from the ground comes back after every drying. */
    GROUND_DAMP,

    /** Wet slip is measured on the test area before the finish is settled. */
    GRIP_BEFORE_GLOSS,

    /** The wet floor was measured, and grips too little. */
    GRIPS_TOO_LITTLE,

    /** Dye or oil comes off with the cut. */
    DYE_COMES_OFF,

    /** The edges of bays may show as frames on dark stone. */
    FRAMES_ON_DARK_STONE,

    /** Of a slippery wet floor the face is chosen by a reading, wet and barefoot, and not by its name. */
    GRIP_BY_READING,

    /** Dry rooms beside a wet, barefoot floor are surveyed apart and have a finish of their own. */
    WET_ROOMS_APART,

    /** The finish is agreed as a class of gloss and a test area, not by its name. */
    FINISH_IS_MEASURED,

    /** The result is judged by its gain and spread over the baseline. */
    GAIN_OVER_BASELINE,

    /** Cleaning leaves marks and finish as they are. */
    MARKS_STAY,

    /** Local marks are softened, not cleared. */
    LOCAL_MARKS_SOFTENED,

    /** Of two stones side by side one is finished well. */
    ONE_OF_TWO_STONES,

    /** A polished and a coated floor are kept in different ways. */
    POLISH_OR_COATING,

    /** The best corner reads lower than the finish is called. */
    READS_LOWER_THAN_NAMED,

    /** The start is too fine for the damage that a low reading shows; what it leaves stays under the gloss. */
    OLD_DAMAGE_STAYS,

    /** The depth of the cut decides how much aggregate shows. */
    AGGREGATE_SHOWS,

    /** A burnished guard is a film and wears off; it is not the polish. */
    GUARD_IS_NO_POLISH,

    /** The lanes decide the cut of the whole field. */
    LANES_DECIDE,

    /** The border of lanes worked alone may show. */
    LANES_MAY_SHOW,

    /** The floor cannot be handed over by the day asked for. */
    DEADLINE_NOT_MET,

    /** Some steps need the floor closed for longer than it may be; closed days are agreed for them. */
    NEEDS_CLOSED_DAYS,

    /** Work by night is noise by night, and each night loses its setting up. */
    NIGHTS_ARE_SHORT,

    /** Leaving the floor as it is remains an option. */
    LEAVING_IT_IS_AN_OPTION
}
