package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** What keeps the finish. */
public enum Upkeep implements Term {
    /** Dust mop daily. */
    DUST_MOP,

    /** Neutral cleaner. */
    NEUTRAL_CLEANER,

    /** Brush and vacuum dry where salts show. */
    DRY_ON_SALTS,

    /** 4.5 to 6 m of mats at the doors. */
    MATS,

    /** Scrub or burnish with the pad of the last grit, as often as traffic asks. */
    LAST_PAD_UPKEEP,

    /** With the pad of the last grit about weekly. */
    PAD_WEEKLY,

    /** With the pad of the last grit about monthly. */
    PAD_MONTHLY,

    /** With the pad of the last grit a few times a year. */
    PAD_QUARTERLY,

    /** With the pad of the last grit only when readings ask for it. */
    PAD_WHEN_READINGS_ASK,

    /** The scrubber may carry the pad. */
    SCRUBBER_CARRIES_PAD,

    /** Mop with less water. */
    LESS_WATER,

    /** Touch up lanes with the pad of the last grit. */
    LANE_TOUCH_UP,

    /** No finer pad than the last grit: it makes shiny lanes. */
    NO_FINER_PAD,

    /** No nightly diamond on soft stone. */
    NO_NIGHTLY_DIAMOND,

    /** Use no acid cleaner, vinegar or descaler. */
    NO_ACID,

    /** Descale seldom, on wetted joints, and never beside chlorine. */
    DESCALE_SELDOM,

    /** Keep acid, ammonia and strong alkali off metal divider strips. */
    SPARE_STRIPS,

    /** Use no rust remover that contains hydrofluoric acid, fluoride or bifluoride. */
    NO_FLUORIDE,

    /** Act when gloss falls under 80 % of the accepted reading, or lanes 10 to 15 GU under corners. */
    WATCH_GLOSS,

    /** Keep the coating; no diamond pads on it. */
    KEEP_COATING
}
