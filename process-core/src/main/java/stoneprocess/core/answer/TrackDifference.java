package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.TrackKind;

/**
 * A track that two plans work over different grits.
 *
 * @param track the track
 * @param one keys of the grits of the one, coarse to fine; none when it does not work the track
 * @param other keys of the grits of the other
 */
public record TrackDifference(TrackKind track, List<String> one, List<String> other) {
    public TrackDifference {
        Refuse.nulls(TrackDifference.class, track, one, other);
        one = List.copyOf(one);
        other = List.copyOf(other);
    }
}
