package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.term.Term;

/** A caution that goes with every figure about an engine indoors (NIOSH 96-118). */
public enum EngineCaution implements Term {
    /** No calculation clears an engine indoors. */
    NEVER_CLEARED_BY_CALCULATION,
    /** Open doors and fans do not guarantee safety. */
    OPEN_DOORS_AND_FANS_ARE_NO_GUARANTEE,
    /** Air is never fully mixed: the concentration at the machine is higher than the computed one. */
    WORSE_AT_THE_MACHINE,
    /** Measure the air before anyone goes in, keep measuring, and wear an alarm. */
    MEASURE_AND_WEAR_AN_ALARM;

    static final List<EngineCaution> ALL = List.of(values());
}
