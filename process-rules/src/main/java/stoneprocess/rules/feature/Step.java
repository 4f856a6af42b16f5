package stoneprocess.rules.feature;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;

/**
 * One grit of one track, as the sequence was decided. Always known.
 *
 * @param subject what contributions about this step are about
 * @param track the track
 * @param bond bond of the grit
 * @param grit how fine the grit is
 * @param order where it stands in the track
 * @param end whether it is the last
 * @param method wet or dry
 */
public record Step(
        Subject.OfStep subject,
        TrackKind track,
        Bond bond,
        GritClass grit,
        StepOrder order,
        StepEnd end,
        WorkMethod method) {
    public Step {
        Refuse.nulls(Step.class, subject, track, bond, grit, order, end, method);
    }
}
