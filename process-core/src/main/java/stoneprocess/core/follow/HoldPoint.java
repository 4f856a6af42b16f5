package stoneprocess.core.follow;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.TrackKind;

/**
 * Where the work stands: the grit worked last.
 *
 * @param track the track it was worked on
 * @param grade bond and grit number
 * @param passes passes of it since the grit before, from 1 up
 */
public record HoldPoint(TrackKind track, AbrasiveGrade grade, int passes) {
    public HoldPoint {
        Refuse.nulls(HoldPoint.class, track, grade);
    }
}
