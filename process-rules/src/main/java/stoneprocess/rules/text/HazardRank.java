package stoneprocess.rules.text;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Hazard;

/** How much a floor adds to what every wet job has to mind, the most first. */
enum HazardRank implements Term {
    /** Nobody starts before a licensed person has cleared it. */
    STOPS_THE_WORK,

    /** Would stop the work, and is raised only because a question is open: the answer comes before any cut. */
    SETTLE_FIRST,

    /** Out of the ordinary: this floor, its products or its people add it. */
    ADDED_HERE,

    /** Every floor that is ground wet has it. */
    STANDING,

    /** Out of the ordinary, and raised only because a question is open. */
    NOT_CHECKED;

    private static final Set<Hazard> STOPPING =
            EnumSet.of(Hazard.FIBROUS_STONE, Hazard.HAZARDOUS_LAYER, Hazard.FLOOR_LOAD);
    private static final Set<Hazard> ON_EVERY_WET_JOB = EnumSet.of(
            Hazard.SILICA_DUST,
            Hazard.ELECTRICITY,
            Hazard.WET_FLOOR,
            Hazard.NOISE,
            Hazard.VIBRATION,
            Hazard.LIFTING,
            Hazard.SLURRY);

    static HazardRank of(SafetyWarning warning) {
        if (STOPPING.contains(warning.hazard())) {
            return warning.certain() ? STOPS_THE_WORK : SETTLE_FIRST;
        }
        if (ON_EVERY_WET_JOB.contains(warning.hazard())) {
            return STANDING;
        }
        return warning.certain() ? ADDED_HERE : NOT_CHECKED;
    }

    /** The warnings of this rank. */
    List<SafetyWarning> of(List<SafetyWarning> warnings) {
        return warnings.stream().filter(warning -> of(warning) == this).toList();
    }
}
