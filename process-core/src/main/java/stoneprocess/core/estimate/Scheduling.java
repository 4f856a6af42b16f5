package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;

/** Puts the hours of an estimate on the days of a calendar. Minutes of the clock run from the first shift on. */
final class Scheduling {
    private static final double DAY = 1440;
    /** Less than a printed minute's rounding: work that ends a shift does not begin the next. */
    private static final double ROUNDING = 0.01;
    /** The end of a wait that does not run. */
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** Minutes of one bay's part, and the wait after it. */
    private static final class Task {
        private final String name;
        private final boolean whole;
        private double minutes;
        private double wait;
        private boolean waitsForWarmth;

        /** Its wait holds up nothing but what goes over the whole floor. */
        boolean isInPlaces() {
            return !waitsForWarmth && OtherWork.isInPlaces(name);
        }

        boolean goesOnBesideCures() {
            return isInPlaces() || name.equals(OtherWork.TEST_AREA);
        }

        Task(String name, boolean whole) {
            this.name = name;
            this.whole = whole;
        }
    }

    private final WorkingTimes times;
    private final double shift;
    private final double workday;
    /** What the first shift has more than the others: no day is begun again before it. */
    private final double firstShiftMore;

    private final int firstWorkday;
    private final List<Task> tasks;
    private final List<Bar> bars = new ArrayList<>();
    private final double[] crewFree;
    private final double[] bayReady;
    private final int[] next;
    private double lastEnd;

    /**
     * @param daily what beginning and ending a day takes of every shift but the first; not in the lines
     * @param curing names of the other work whose wait does not run; empty on a floor that is warm enough
     */
    Scheduling(List<Line> lines, WorkingTimes times, Spread<TimeSpan> daily, Case which, Set<String> curing) {
        this.times = times;
        this.firstShiftMore = daily.at(which).minutes();
        this.shift = times.shift().minutes() - firstShiftMore;
        this.workday = shift * times.shiftsADay();
        this.firstWorkday = workday(0);
        this.tasks = tasks(lines, which, curing);
        this.crewFree = new double[times.crews()];
        this.bayReady = new double[times.bays()];
        this.next = new int[times.bays()];
    }

    private static List<Task> tasks(List<Line> lines, Case which, Set<String> curing) {
        List<Task> tasks = new ArrayList<>();
        boolean whole = true;
        for (Line line : lines) {
            if (line instanceof Line.WorkLine work
                    && work.work() != Work.DAILY
                    && work.elapsed().at(which).minutes() > 0) {
                String name = work.subject().orElse(work.work().key());
                if (tasks.isEmpty() || !last(tasks).name.equals(name) || last(tasks).wait > 0) {
                    tasks.add(new Task(name, whole));
                }
                last(tasks).minutes += work.elapsed().at(which).minutes();
                whole &= work.work() != Work.TEST_AREA;
            } else if (line instanceof Line.WaitLine wait && !tasks.isEmpty()) {
                double minutes = wait.hours().at(which).minutes();
                // The owner is called while the test area cures, and judges it once it has.
                last(tasks).wait = wait.reason() == Wait.SIGN_OFF
                        ? Math.max(last(tasks).wait, minutes)
                        : last(tasks).wait + minutes;
                last(tasks).waitsForWarmth |=
                        curing.contains(wait.subject().orElse(wait.reason().key()));
            }
        }
        return tasks;
    }

    private static Task last(List<Task> tasks) {
        return tasks.get(tasks.size() - 1);
    }

    /** The schedule; {@code warm} is the temperature that a cure waits for where the floor is colder. */
    Schedule schedule(Temperature warm) {
        int reached = run();
        bars.sort(Comparator.comparing(Bar::start).thenComparing(Bar::bay).thenComparing(Bar::isWait));
        return new Schedule(
                new TimeSpan(shift),
                new TimeSpan(shift + firstShiftMore),
                bars,
                bars.stream()
                        .filter(bar -> !bar.isWait())
                        .map(Bar::end)
                        .max(Comparator.naturalOrder())
                        .orElse(new TimeSpan(0)),
                days(),
                tasks.stream().anyMatch(task -> task.waitsForWarmth) ? Optional.of(warm) : Optional.empty(),
                held(reached));
    }

    /** Calendar days until the last task is done and the last wait is over. */
    int days() {
        return dayOfEnd(lastEnd) + 1;
    }

    /** Days on which somebody works. */
    int workedDays() {
        return (int) daysAtWork().stream().filter(times::isWorkday).count();
    }

    private BitSet daysAtWork() {
        BitSet days = new BitSet();
        bars.stream().filter(bar -> !bar.isWait()).forEach(bar -> days.set(bar.firstDay() - 1, bar.lastDay()));
        return days;
    }

    /** How often nobody works for so long between two days of work. */
    int emptyFor(TimeSpan away) {
        BitSet days = daysAtWork();
        int gaps = 0;
        for (int end = days.nextSetBit(0); end >= 0; end = days.nextSetBit(end + 1)) {
            int next = days.nextSetBit(end + 1);
            gaps += next > 0 && (next - end - 1) * DAY >= away.minutes() ? 1 : 0;
        }
        return gaps;
    }

    /** Minutes by which the days that one crew works fall short of the least that is paid, all together. */
    double missing(double least) {
        double missing = 0;
        for (int day = 0; day < days(); day++) {
            double begins = worked(day * DAY);
            double ends = begins + hours(day);
            double atWork = bars.stream()
                    .filter(bar -> !bar.isWait())
                    .mapToDouble(bar -> Math.max(
                            0,
                            Math.min(ends, bar.end().minutes())
                                    - Math.max(begins, bar.start().minutes())))
                    .sum();
            if (atWork > ROUNDING) {
                double dayBegun = day == firstWorkday ? 0 : firstShiftMore;
                missing += Math.max(0, least - atWork - dayBegun);
            }
        }
        return missing;
    }

    /** Gives every task its place; tells how many were done on the whole floor before the bays. */
    int run() {
        double begun = 0;
        double cured = 0;
        int whole = 0;
        while (whole < tasks.size() && tasks.get(whole).whole && begun < NEVER) {
            Task task = tasks.get(whole++);
            if (!task.goesOnBesideCures()) {
                begun = Math.max(begun, cured);
            }
            double start = open(begun);
            double ready = work(task, 0, 0, start);
            begun = task.isInPlaces() ? finish(start, task.minutes) : ready;
            cured = task.isInPlaces() ? Math.max(cured, ready) : cured;
        }
        begun = Math.max(begun, cured);
        int reached = whole;
        Arrays.fill(crewFree, begun);
        Arrays.fill(bayReady, begun);
        Arrays.fill(next, whole);
        Optional<Integer> bay;
        while ((bay = soonest()).isPresent()) {
            int chosen = bay.get();
            int crew = firstFree();
            Task task = tasks.get(next[chosen]++);
            double start = begins(chosen, task);
            crewFree[crew] = finish(start, part(task));
            bayReady[chosen] = work(task, chosen + 1, crew, start);
        }
        return reached;
    }

    /** The tasks that are left in some bay. */
    private List<String> held(int reached) {
        int least = Arrays.stream(next).min().orElse(reached);
        return tasks.subList(least, tasks.size()).stream()
                .map(task -> task.name)
                .distinct()
                .toList();
    }

    private double part(Task task) {
        return task.whole ? task.minutes : task.minutes / times.bays();
    }

    /** The bay in which work can begin first; of several, the one that is least far on. */
    private Optional<Integer> soonest() {
        Integer soonest = null;
        double first = 0;
        for (int bay = 0; bay < next.length; bay++) {
            if (next[bay] < tasks.size() && bayReady[bay] < NEVER) {
                double start = begins(bay, tasks.get(next[bay]));
                boolean sooner = soonest == null
                        || start < first - ROUNDING
                        || start < first + ROUNDING && next[bay] < next[soonest];
                if (sooner) {
                    soonest = bay;
                    first = start;
                }
            }
        }
        return Optional.ofNullable(soonest);
    }

    private double begins(int bay, Task task) {
        return start(Math.max(bayReady[bay], crewFree[firstFree()]), part(task), bay + 1);
    }

    private int firstFree() {
        int first = 0;
        for (int crew = 1; crew < crewFree.length; crew++) {
            if (crewFree[crew] < crewFree[first]) {
                first = crew;
            }
        }
        return first;
    }

    /**
     * Notes a task and the wait after it; gives the minute from which its bay goes on. Nobody comes back to an empty site
     * for the rest of a day.
     */
    private double work(Task task, int bay, int crew, double start) {
        double end = finish(start, part(task));
        note(task.name, bay, crew + 1, start, end);
        if (task.waitsForWarmth) {
            return NEVER;
        }
        if (task.wait == 0) {
            return end;
        }
        double ready = end + task.wait;
        note(task.name, bay, 0, end, ready);
        boolean nobodyElsewhere = task.whole || times.bays() == 1;
        return nobodyElsewhere ? StrictMath.ceil((ready - ROUNDING) / DAY) * DAY : ready;
    }

    private void note(String task, int bay, int crew, double start, double end) {
        lastEnd = Math.max(lastEnd, end);
        bars.add(new Bar(
                task,
                bay,
                crew,
                new TimeSpan(worked(start)),
                new TimeSpan(worked(end)),
                (int) Math.floor(start / DAY) + 1,
                Math.max((int) Math.floor(start / DAY), dayOfEnd(end)) + 1));
    }

    private static int dayOfEnd(double end) {
        return Math.max(0, (int) StrictMath.ceil(end / DAY - ROUNDING / DAY) - 1);
    }

    /** The first minute, not before the given one, from which so much work goes on without its bay being closed. */
    private double start(double from, double minutes, int bay) {
        double start = open(from);
        if (times.closures().isEmpty()) {
            return start;
        }
        for (int day = (int) (start / DAY); day <= (int) (finish(start, minutes) / DAY); day++) {
            if (times.isClosed(bay, day)) {
                start = open((day + 1) * DAY);
                day = (int) (start / DAY) - 1;
            }
        }
        return start;
    }

    /** The first minute, not before the given one, at which the site is open. */
    private double open(double from) {
        int day = (int) (from / DAY);
        return times.isWorkday(day) && from - day * DAY < hours(day) - ROUNDING ? from : workday(day + 1) * DAY;
    }

    /** The first day, not before the given one, that is worked. */
    private int workday(int from) {
        return times.workday(times.workdaysBefore(from));
    }

    /** Minutes for work on a day that is worked. */
    private double hours(int day) {
        return day == firstWorkday ? workday + firstShiftMore : workday;
    }

    private double finish(double start, double minutes) {
        int day = (int) (start / DAY);
        double today = hours(day) - (start - day * DAY);
        if (minutes <= today + ROUNDING) {
            return start + minutes;
        }
        double left = minutes - today;
        int whole = Math.max(0, (int) StrictMath.ceil((left - ROUNDING) / workday) - 1);
        int last = times.workday(times.workdaysBefore(day) + 1 + whole);
        return last * DAY + left - whole * workday;
    }

    /** Shift minutes before a minute of the clock. */
    private double worked(double minute) {
        int day = (int) (minute / DAY);
        double worked = times.workdaysBefore(day) * workday + (day > firstWorkday ? firstShiftMore : 0);
        return worked + (times.isWorkday(day) ? Math.min(hours(day), minute - day * DAY) : 0);
    }
}
