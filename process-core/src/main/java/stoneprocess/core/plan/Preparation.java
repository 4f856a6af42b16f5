package stoneprocess.core.plan;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.topic.Task;

/**
 * One task before the first cut.
 *
 * @param task what is done
 * @param rest how long the floor then rests before it is worked on; the maker's sheet goes before it. Empty when there
 *     is nothing to wait for, or when a reading ends the wait
 */
public record Preparation(Task task, Optional<Range<TimeSpan>> rest) {
    public Preparation {
        Refuse.nulls(Preparation.class, task, rest);
    }
}
