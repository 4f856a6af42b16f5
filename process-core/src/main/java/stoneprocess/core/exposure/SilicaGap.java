package stoneprocess.core.exposure;

import stoneprocess.core.term.Term;

/** What a task lacks of a control listed in Table 1. */
public enum SilicaGap implements Term {
    /** Water fed to the cutting face by the tool, or a collector. */
    WATER_FED_OR_COLLECTOR,
    /** A shroud with a collector: water is listed for this tool outdoors only. */
    COLLECTOR,
    /** The shroud and collection system made for the tool. */
    SHROUD,
    /** The airflow that the maker prescribes, which is not known. */
    MAKERS_AIRFLOW,
    /** More airflow. */
    AIRFLOW,
    /** A better filter. */
    FILTER,
    /** Filter cleaning. */
    FILTER_CLEANING,
    /** Vacuuming with a high-efficiency filter between passes. */
    HEPA_BETWEEN_PASSES
}
