package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Speed;

/**
 * What a crew timed on its own floors, in place of the defaults. It counts as timed, with the passes that the crew
 * made: the job's passes, stone and machine no longer change it.
 *
 * @param step name of the step of the job
 * @param field open field, area an hour for the whole step, above zero; empty when it was not timed
 * @param edges running length of edge an hour, above zero; empty when it was not timed
 */
public record CrewTiming(String step, Optional<Range<AreaRate>> field, Optional<Range<Speed>> edges) {
    public CrewTiming {
        Refuse.nulls(CrewTiming.class, step, field, edges);
        if (field.isEmpty() && edges.isEmpty()) {
            throw new InvalidInputException("timing." + step, "none", "a rate for the open field, the edges or both");
        }
        field.ifPresent(range -> Require.positive("timing." + step + ".field", range.low()));
        edges.ifPresent(range -> Require.positive("timing." + step + ".edges", range.low()));
    }

    /** A timing of the open field. */
    public static CrewTiming field(String step, Range<AreaRate> rate) {
        return new CrewTiming(step, Optional.of(rate), Optional.empty());
    }

    /** A timing of the edges. */
    public static CrewTiming edges(String step, Range<Speed> rate) {
        return new CrewTiming(step, Optional.empty(), Optional.of(rate));
    }
}
