package stoneprocess.core.estimate;

import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;

/**
 * How long the floor is taken, without dates.
 *
 * @param workingDays shifts of one crew, one after another; the same for several crews, who share them
 * @param waiting all waits added up, in hours of the clock; some run side by side
 * @param returns times that the crew leaves the site for {@code estimate.away} or longer while something cures or is signed
 * @param days calendar days from the start of the first shift until the floor is used again, with the site's crews and
 *     days of the week; waits run day and night
 */
public record Calendar(Spread<Count> workingDays, Spread<TimeSpan> waiting, Spread<Count> returns, Spread<Count> days) {
    public Calendar {
        Refuse.nulls(Calendar.class, workingDays, waiting, returns, days);
    }

    /**
     * The calendar of lines that follow one another.
     *
     * @param daily what beginning and ending a day takes of every shift but the first, less than a shift; not in the lines
     */
    static Calendar of(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily, TimeSpan away) {
        return new Calendar(
                shifts(lines, times, daily),
                Case.spread(
                        which -> Estimate.lines(lines, Line.WaitLine.class)
                                .mapToDouble(line -> line.hours().at(which).minutes())
                                .sum(),
                        TimeSpan::new),
                returns(lines, times, daily, away),
                rising(which -> scheduled(lines, times, daily, which).days()));
    }

    /** Shifts of one crew, one after another on any day. */
    static Spread<Count> shifts(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily) {
        return rising(which -> scheduled(lines, WorkingTimes.everyDay(times.shift()), daily, which)
                .workedDays());
    }

    /** How often shifts one after another on any day leave the site empty for so long. */
    static Spread<Count> returns(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily, TimeSpan away) {
        return rising(which -> scheduled(lines, WorkingTimes.everyDay(times.shift()), daily, which)
                .emptyFor(away));
    }

    /** Minutes of one person by which the shifts of {@link #shifts} fall short of the least that is paid. */
    static double missing(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily, double least, Case which) {
        return scheduled(lines, WorkingTimes.everyDay(times.shift()), daily, which)
                .missing(least);
    }

    private static Scheduling scheduled(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily, Case which) {
        Scheduling scheduling = new Scheduling(lines, times, daily, which, Set.of());
        scheduling.run();
        return scheduling;
    }

    /** Among several crews and bays a longer job may by chance end a shift sooner; no figure is told below the one before it. */
    private static Spread<Count> rising(ToIntFunction<Case> count) {
        int low = count.applyAsInt(Case.LOW);
        int likely = Math.max(low, count.applyAsInt(Case.LIKELY));
        return Spread.of(new Count(low), new Count(likely), new Count(Math.max(likely, count.applyAsInt(Case.HIGH))));
    }
}
