package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;

/**
 * How long the floor is taken, without dates.
 *
 * @param workingDays days on which the crew comes, one shift each
 * @param waiting all waits added up, in hours of the clock
 * @param days days from the start of the first shift until the floor is used again; waits run day and night, and after one
 *     the work goes on with the next day
 */
public record Calendar(Spread<Count> workingDays, Spread<TimeSpan> waiting, Spread<Count> days) {
    private static final double DAY = 1440;
    /** Less than a printed minute's rounding: work that ends a shift does not begin the next. */
    private static final double ROUNDING = 0.01;

    public Calendar {
        Refuse.nulls(Calendar.class, workingDays, waiting, days);
    }

    /**
     * The calendar of lines that follow one another, with one shift a day.
     *
     * @param daily what beginning and ending a day takes of every shift but the first, less than a shift; not in the lines
     */
    static Calendar of(List<Line> lines, TimeSpan shift, Spread<TimeSpan> daily) {
        return new Calendar(
                Case.spread(which -> Course.of(lines, which, shift, daily).days, Count::new),
                Case.spread(
                        which -> Estimate.lines(lines, Line.WaitLine.class)
                                .mapToDouble(line -> line.hours().at(which).minutes())
                                .sum(),
                        TimeSpan::new),
                Case.spread(which -> whole(Course.of(lines, which, shift, daily).now / DAY), Count::new));
    }

    private static double whole(double days) {
        return StrictMath.ceil(days - ROUNDING / DAY);
    }

    /** The days of one case: what stands between two waits fills whole days, the last of them as far as it goes. */
    private static final class Course {
        private final double shift;
        private final double daily;
        private double work;
        private double days;
        private double now;

        private Course(double shift, double daily) {
            this.shift = shift;
            this.daily = daily;
        }

        static Course of(List<Line> lines, Case which, TimeSpan shift, Spread<TimeSpan> daily) {
            Course course = new Course(shift.minutes(), daily.at(which).minutes());
            for (Line line : lines) {
                if (line instanceof Line.WorkLine work) {
                    course.work += work.elapsed().at(which).minutes();
                } else if (line instanceof Line.WaitLine wait
                        && wait.hours().at(which).minutes() > 0) {
                    course.visit();
                    course.now += wait.hours().at(which).minutes();
                }
            }
            course.visit();
            return course;
        }

        private void visit() {
            if (work == 0) {
                return;
            }
            double inTheWay = days == 0 ? work : work + daily;
            double each = shift - daily;
            double more = Math.max(0, StrictMath.ceil((inTheWay - shift - ROUNDING) / each));
            now = (whole(now / DAY) + more) * DAY + inTheWay - more * each;
            days += 1 + more;
            work = 0;
        }
    }
}
