package stoneprocess.core.plan;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * Where lanes are worked alone, the grit at which one of them joins the work of the open field.
 *
 * @param zone name of the lane or entrance in the survey
 * @param grade the first grit that its own damage calls for
 */
public record LaneStart(String zone, AbrasiveGrade grade) {
    public LaneStart {
        Refuse.nulls(LaneStart.class, zone, grade);
    }
}
