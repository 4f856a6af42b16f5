package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.term.Term;

/** What is said with every figure about an engine indoors (NIOSH 96-118). */
public enum EngineCaution implements Term {
    /** No calculation clears an engine indoors. */
    NEVER_CLEARED_BY_CALCULATION,
    /** Open doors and fans do not guarantee safety. */
    OPEN_DOORS_AND_FANS_ARE_NO_GUARANTEE,
    /** Air is not fully mixed: it is worse at the machine than the figure says. */
    WORSE_AT_THE_MACHINE,
    /** Measured air and a worn alarm, before anyone goes in and all the time. */
    MEASURE_AND_WEAR_AN_ALARM;

    static final List<EngineCaution> ALL = List.of(values());
}
