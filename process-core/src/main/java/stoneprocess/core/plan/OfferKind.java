package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** Ways out of an impasse, each of which asks the owner to give something up. */
public enum OfferKind implements Term {
    /** Agree a lower finish. */
    LOWER_FINISH,

    /** The treads stay as saw or tool left them, or are tooled anew. */
    TOOL_FINISH,

    /** The marks stay, softened. */
    KEEP_THE_MARKS,

    /** More aggregate shows than was wanted. */
    MORE_AGGREGATE,

    /** Less aggregate shows than was wanted. */
    LESS_AGGREGATE,

    /** The whole floor is worked in place of the lanes alone. */
    WHOLE_FLOOR,

    /** The floor is done in parts, each handed over before the next is begun. */
    IN_PARTS,

    /** Only the worst places are treated. */
    LOCAL_REPAIR,

    /** Lift and relay the pieces concerned. */
    LIFT_AND_RELAY,

    /** The gouges are filled. */
    FILL,

    /** Replace the worst pieces. */
    REPLACE_PIECES,

    /** The missing grits are bought. */
    GET_GRADES,

    /** Bring another machine. */
    OTHER_MACHINE,

    /** A structural engineer confirms what the floor carries. */
    CONFIRM_LOAD,

    /** A supply is brought that carries the machines. */
    STRONGER_SUPPLY,

    /** More time, or another season. */
    MORE_TIME,

    /** Test the stone until two tests agree. */
    TEST_STONE,

    /** Look again at answers that contradict each other. */
    LOOK_AGAIN,

    /** A licensed person samples and a laboratory clears it. */
    SAMPLE_FIRST,

    /** Have a licensed contractor remove or enclose it. */
    SPECIALIST,

    /** Have a specialist clean it dry and by hand. */
    SPECIALIST_CLEANING,

    /** Clean and maintain the floor without cutting it. */
    CLEAN_ONLY,

    /** Leave the floor as it is. */
    LEAVE_IT
}
