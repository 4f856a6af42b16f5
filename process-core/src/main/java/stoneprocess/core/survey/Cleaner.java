package stoneprocess.core.survey;

import stoneprocess.core.term.Term;

/** What a floor is cleaned with day by day; where several are used, the one furthest down. */
public enum Cleaner implements Term {
    /** Water, or a neutral cleaner. */
    NEUTRAL,

    /** A strong alkali, such as a degreaser. */
    ALKALINE,

    /** Something that smells of ammonia. */
    AMMONIA,

    /** Bleach: hypochlorite, something that smells of chlorine. */
    BLEACH,

    /** An acid: vinegar, descaler, cement remover. */
    ACID,

    /** A rust remover or brightener with hydrofluoric acid, fluoride or bifluoride. */
    FLUORIDE
}
