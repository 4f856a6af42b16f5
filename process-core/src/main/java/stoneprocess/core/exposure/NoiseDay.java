package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.TimeSpan;

/**
 * The noise of a working day.
 *
 * @param periods the parts of the day, one or more, together up to 24 h; what is not listed counts as quiet
 */
public record NoiseDay(List<NoisePeriod> periods) implements ExposureInput {
    /**
     * Checks the length of the day.
     *
     * @throws InvalidInputException when no period is given or they make more than 24 h
     */
    public NoiseDay {
        Refuse.nulls(NoiseDay.class, periods);
        periods = List.copyOf(periods);
        TimeSpan together = new TimeSpan(
                periods.stream().mapToDouble(period -> period.time().minutes()).sum());
        if (periods.isEmpty() || together.compareTo(NoisePeriod.WHOLE_DAY) > 0) {
            throw new InvalidInputException(
                    "noise.periods", together.print(), "one period or more, together up to 24 h");
        }
    }
}
