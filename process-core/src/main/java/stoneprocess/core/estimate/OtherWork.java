package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Work besides the steps: fills, grout, relaying.
 *
 * @param name what it is; once in a job
 * @param work time of one technician
 * @param curing curing or drying before anything else goes on, in hours of the clock, day and night
 * @param after name of the step that it follows; empty for before the first
 */
public record OtherWork(String name, Range<TimeSpan> work, Range<TimeSpan> curing, Optional<String> after) {
    public OtherWork {
        Require.text("other-work.name", name);
    }
}
