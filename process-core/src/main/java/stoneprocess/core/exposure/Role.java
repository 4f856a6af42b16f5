package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** Who decides. A calculation prepares the decision and never replaces it. */
public enum Role implements Term {
    /** The occupational hygienist, who measures noise, dust and gas. */
    HYGIENIST,
    /** The employer's competent person for the written exposure control plan. */
    COMPETENT_PERSON,
    /** The ergonomist or safety officer who judges manual handling. */
    ERGONOMIST,
    /** The slip tester who measures the floor. */
    SLIP_TESTER,
    /** The authority that permits discharge or takes the waste. */
    WASTE_AUTHORITY,
    /** The materials laboratory. */
    LABORATORY,
    /** The electrician who is responsible for the supply. */
    ELECTRICIAN,
    /** The licensed surveyor of asbestos and lead. */
    ASBESTOS_SURVEYOR,
    /** The structural engineer who is responsible for what a floor carries. */
    STRUCTURAL_ENGINEER,
    /** The conservator of historic fabric. */
    CONSERVATOR,
    /** The officer who is responsible for a listed building. */
    RESPONSIBLE_OFFICER,
    /** The authority that permits discharge to a sewer or to waters. */
    WATER_AUTHORITY,
    /** The building manager. */
    BUILDING_MANAGER,
    /** The person in charge of the crew. */
    CREW_LEADER
}
