package stoneprocess.core.plan;

import stoneprocess.core.term.Term;

/** Ways out of an impasse, each of which asks the owner to give something up. */
public enum OfferKind implements Term {
    /** A lower finish. */
    LOWER_FINISH,

    /** The marks stay, softened. */
    KEEP_THE_MARKS,

    /** Only the worst places are treated. */
    LOCAL_REPAIR,

    /** The pieces concerned are lifted and relaid. */
    LIFT_AND_RELAY,

    /** The gouges are filled. */
    FILL,

    /** The worst pieces are replaced. */
    REPLACE_PIECES,

    /** The missing grades are bought. */
    GET_GRADES,

    /** Another machine is brought. */
    OTHER_MACHINE,

    /** A structural engineer confirms what the floor carries. */
    CONFIRM_LOAD,

    /** A supply is brought that carries the machines. */
    STRONGER_SUPPLY,

    /** The stone is tested until two tests agree. */
    TEST_STONE,

    /** A licensed person samples and a laboratory clears it. */
    SAMPLE_FIRST,

    /** A licensed contractor removes or encloses it. */
    SPECIALIST,

    /** A specialist cleans it dry and by hand. */
    SPECIALIST_CLEANING,

    /** The floor is cleaned and kept, not cut. */
    CLEAN_ONLY,

    /** The floor stays as it is. */
    LEAVE_IT
}
