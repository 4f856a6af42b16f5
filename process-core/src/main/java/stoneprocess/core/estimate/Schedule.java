package stoneprocess.core.estimate;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;

/**
 * A job on the days of a calendar, by its likely figures: what a bar chart draws. Waits run day and night beside the work
 * in other bays.
 *
 * @param shift working time of a shift without its beginning and end
 * @param firstShift working time of the first shift, which no day is begun again before
 * @param bars tasks and waits in the order in which they begin
 * @param end shift hours until the last task that is reached is done
 * @param days calendar days until the last task that is reached is done and the last wait that runs is over
 * @param waitsFor the temperature that a cure on the cold floor waits for; empty where every wait runs
 * @param held tasks that are not reached in every bay before the floor is warm enough
 */
public record Schedule(
        TimeSpan shift,
        TimeSpan firstShift,
        List<Bar> bars,
        TimeSpan end,
        int days,
        Optional<Temperature> waitsFor,
        List<String> held) {
    /** The version of the JSON form. */
    public static final String FORMAT = "schedule/1";

    private static final double ROUNDING = 0.01;

    public Schedule {
        Refuse.nulls(Schedule.class, shift, firstShift, bars, end, waitsFor, held);
        bars = List.copyOf(bars);
        held = List.copyOf(held);
    }

    /**
     * The schedule of an estimate at the times of its site. What comes before the first step, the test area and its
     * signature last, is done on the whole floor by the first crew. Then each bay takes its part of every task in the job's
     * order, and the crew that is free first goes where work can begin first. A task is begun only when it ends before its
     * bay is closed. The likely {@code estimate.daily} is taken from each shift but the first. The floor counts as warm
     * enough for every cure. With one crew and one bay the days are those of {@link Estimate#calendar}.
     *
     * @param parameters the numbers of the estimate
     */
    public static Schedule of(Estimate estimate, Parameters parameters) {
        return of(estimate, Optional.empty(), parameters);
    }

    /**
     * The same on a floor of a told temperature: below {@code warmth.warm-enough} fills, grout, mortar, densifier and sealer
     * do not cure, so that their waits do not run and nothing after them is reached.
     *
     * @param floor temperature of the floor during the work; empty where nobody told it, or it will be warmed
     */
    public static Schedule of(Estimate estimate, Optional<Temperature> floor, Parameters parameters) {
        Refuse.nulls(Schedule.class, estimate, floor, parameters);
        Temperature warm = parameters.get("warmth.warm-enough", Temperature.class);
        boolean cold = floor.filter(told -> told.compareTo(warm) < 0).isPresent();
        Job job = estimate.job();
        return new Scheduling(
                        estimate.lines(),
                        job.site().times(),
                        Hours.daily(job, new Numbers(parameters)),
                        Case.LIKELY,
                        cold ? curing(job) : Set.of())
                .schedule(warm);
    }

    private static Set<String> curing(Job job) {
        Set<String> curing = new HashSet<>(Set.of(Wait.SEALER_CURING.key(), Wait.TEST_AREA.key()));
        job.others().stream().filter(OtherWork::cures).map(OtherWork::name).forEach(curing::add);
        return curing;
    }

    /** The tasks that are done by the end of a shift, counted from 1. */
    public List<Bar> doneByShift(int number) {
        double worked = number < 1 ? 0 : firstShift.minutes() + (number - 1) * shift.minutes();
        return tasks(bar -> bar.end().minutes() <= worked + ROUNDING);
    }

    /** The tasks that are done by the end of a calendar day, counted from 1. */
    public List<Bar> doneBy(int day) {
        return tasks(bar -> bar.lastDay() <= day);
    }

    private List<Bar> tasks(Predicate<Bar> which) {
        return bars.stream().filter(bar -> !bar.isWait()).filter(which).toList();
    }
}
