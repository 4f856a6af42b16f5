package stoneprocess.core.estimate;

import java.util.List;
import java.util.function.Predicate;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.TimeSpan;

/**
 * A job on the days of a calendar, by its likely figures: what a bar chart draws. Waits run day and night beside the work
 * in other bays.
 *
 * @param shift working time of a shift without its beginning and end
 * @param bars tasks and waits in the order in which they begin
 * @param end shift hours until the last task is done
 * @param days calendar days until the last task is done and the last wait is over
 */
public record Schedule(TimeSpan shift, List<Bar> bars, TimeSpan end, int days) {
    /** The version of the JSON form. */
    public static final String FORMAT = "schedule/1";

    public Schedule {
        Refuse.nulls(Schedule.class, shift, bars, end);
        bars = List.copyOf(bars);
    }

    /**
     * The schedule of an estimate. What comes before the first step, the test area last, is done on the whole floor by the first crew. Then each
     * bay takes its part of every task in the job's order, and the crew that is free first goes where work can begin first.
     * A task is begun only when it ends before its bay is closed. The likely {@code estimate.daily} is taken from each
     * shift. No temperature is known, so none is minded.
     *
     * @param parameters the numbers of the estimate
     * @throws stoneprocess.core.problem.InvalidInputException for a shift that its own beginning and end fill
     */
    public static Schedule of(Estimate estimate, WorkingTimes times, Parameters parameters) {
        Refuse.nulls(Schedule.class, estimate, times, parameters);
        return new Scheduling(estimate, times, parameters).schedule();
    }

    /** The tasks that are done by the end of a calendar day, counted from 1. */
    public List<Bar> doneBy(int day) {
        return tasks(bar -> bar.lastDay() <= day);
    }

    /** The tasks that are done when the site was worked for so many shift hours. */
    public List<Bar> doneBy(TimeSpan worked) {
        return tasks(bar -> bar.end().compareTo(worked) <= 0);
    }

    private List<Bar> tasks(Predicate<Bar> which) {
        return bars.stream().filter(bar -> !bar.isWait()).filter(which).toList();
    }
}
