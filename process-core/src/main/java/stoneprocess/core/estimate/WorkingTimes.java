package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/**
 * When a site is worked, and by how many crews.
 *
 * @param shift length of a shift, from opening to closing, above 0 and up to 24 h
 * @param shiftsADay shifts of a day, one after another, 1 to 3; together no longer than 24 h
 * @param daysAWeek working days from Monday on, 1 to 7
 * @param firstDay day of the week on which the work starts, from 1 for Monday to 7
 * @param crews crews with a machine each, 1 to 50; no two share a bay
 * @param bays parts of the floor, alike in size, that are worked one beside another, 1 to 200
 * @param closures when bays are closed to the crews
 */
public record WorkingTimes(
        TimeSpan shift, int shiftsADay, int daysAWeek, int firstDay, int crews, int bays, List<Closure> closures) {
    private static final TimeSpan DAY = TimeSpan.of(1, Unit.DAY);
    private static final int MOST_CREWS = 50;
    private static final int MOST_BAYS = 200;
    private static final int DAYS = 7;

    /**
     * Days on which no work is done in a bay, each counted from 1.
     *
     * @param bay the bay, 1 or more
     * @param from the first day
     * @param to the last day, not before the first
     */
    public record Closure(int bay, int from, int to) {
        public Closure {
            within("closure.bay", bay, 1, MOST_BAYS);
            within("closure.from", from, 1, 3650);
            within("closure.to", to, from, 3650);
        }
    }

    public WorkingTimes {
        Refuse.nulls(WorkingTimes.class, shift, closures);
        Require.positive("times.shift", shift);
        within("times.shifts-a-day", shiftsADay, 1, 3);
        within("times.days-a-week", daysAWeek, 1, 7);
        within("times.first-day", firstDay, 1, 7);
        within("times.crews", crews, 1, MOST_CREWS);
        within("times.bays", bays, 1, MOST_BAYS);
        if (shiftsADay * shift.minutes() > DAY.minutes()) {
            throw new InvalidInputException("times.shift", shift.print(), "shifts of 24 h a day or less");
        }
        closures = List.copyOf(closures);
        for (Closure closure : closures) {
            within("closure.bay", closure.bay(), 1, bays);
        }
    }

    /** One shift on each of {@code estimate.days-a-week} from Monday on, one crew, the floor as one bay. */
    public static WorkingTimes usual(TimeSpan shift, Parameters parameters) {
        int week = (int) parameters.get("estimate.days-a-week", Count.class).number();
        return new WorkingTimes(shift, 1, week, 1, 1, 1, List.of());
    }

    /** One shift on each day of the week, one crew, the floor as one bay. */
    public static WorkingTimes everyDay(TimeSpan shift) {
        return new WorkingTimes(shift, 1, 7, 1, 1, 1, List.of());
    }

    /** The same with another length of a shift. */
    public WorkingTimes withShift(TimeSpan other) {
        return new WorkingTimes(other, shiftsADay, daysAWeek, firstDay, crews, bays, closures);
    }

    /** Whether crews work on a day, counted from zero. */
    boolean isWorkday(int day) {
        return (firstDay - 1 + day) % DAYS < daysAWeek;
    }

    /** How many days before a day, both counted from zero, are worked. */
    int workdaysBefore(int day) {
        return sinceMonday(firstDay - 1 + day) - sinceMonday(firstDay - 1);
    }

    /** The day, counted from zero, before which so many are worked, and which is worked itself. */
    int workday(int before) {
        int sinceMonday = before + sinceMonday(firstDay - 1);
        return sinceMonday / daysAWeek * DAYS + sinceMonday % daysAWeek - (firstDay - 1);
    }

    /** Worked days among so many from a Monday on. */
    private int sinceMonday(int days) {
        return days / DAYS * daysAWeek + Math.min(days % DAYS, daysAWeek);
    }

    /** Whether a bay is closed on a day, counted from zero. */
    boolean isClosed(int bay, int day) {
        return closures.stream()
                .anyMatch(closure -> closure.bay() == bay && closure.from() <= day + 1 && day + 1 <= closure.to());
    }

    private static void within(String field, int number, int least, int most) {
        if (number < least || number > most) {
            throw new InvalidInputException(field, Integer.toString(number), "from " + least + " to " + most);
        }
    }
}
