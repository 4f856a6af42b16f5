package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.TrackKind;

/**
 * A part of the work with its steps, coarse to fine.
 *
 * @param kind which part
 * @param steps its steps in their order
 */
public record Track(TrackKind kind, List<PlannedStep> steps) {
    public Track {
        Refuse.nulls(Track.class, kind, steps);
        steps = List.copyOf(steps);
    }
}
