package stoneprocess.core.estimate;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;

/**
 * How long the floor is taken, without dates.
 *
 * @param workingDays shifts that the hours of work fill
 * @param waiting all waits added up, in hours of the clock
 * @param days days from the start of the first shift until the floor is used again; waits run day and night, work goes
 *     on in the next shift
 */
public record Calendar(Spread<Count> workingDays, Spread<TimeSpan> waiting, Spread<Count> days) {
    private static final double DAY = 1440;
    /** Less than a printed minute's rounding: work that ends a shift does not begin the next. */
    private static final double ROUNDING = 0.01;

    public Calendar {
        Refuse.nulls(Calendar.class, workingDays, waiting, days);
    }

    /** The calendar of lines that follow one another, with one shift a day. */
    static Calendar of(List<Line> lines, TimeSpan shift) {
        return new Calendar(
                Case.spread(
                        which -> whole(minutes(
                                        Estimate.lines(lines, Line.WorkLine.class),
                                        line -> line.clock().at(which))
                                / shift.minutes()),
                        Count::new),
                Case.spread(
                        which -> minutes(
                                Estimate.lines(lines, Line.WaitLine.class),
                                line -> line.hours().at(which)),
                        TimeSpan::new),
                Case.spread(which -> whole(end(lines, which, shift.minutes()) / DAY), Count::new));
    }

    private static <L> double minutes(Stream<L> lines, Function<L, TimeSpan> time) {
        return lines.map(line -> time.apply(line).minutes()).reduce(0.0, Double::sum);
    }

    private static double whole(double days) {
        return StrictMath.ceil(days - ROUNDING / DAY);
    }

    /** Minutes of the clock from the start of the first shift to the end of the last line. */
    private static double end(List<Line> lines, Case which, double shift) {
        double now = 0;
        for (Line line : lines) {
            if (line instanceof Line.WaitLine wait) {
                now += wait.hours().at(which).minutes();
            } else if (line instanceof Line.WorkLine work) {
                now = afterWork(now, work.clock().at(which).minutes(), shift);
            }
        }
        return now;
    }

    private static double afterWork(double start, double minutes, double shift) {
        if (minutes == 0) {
            return start;
        }
        double day = StrictMath.floor(start / DAY);
        double worked = Math.min(start - day * DAY, shift) + minutes;
        double fullShifts = StrictMath.ceil(worked / shift) - 1;
        return (day + fullShifts) * DAY + worked - fullShifts * shift;
    }
}
