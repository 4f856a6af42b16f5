package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;

/** Puts the likely hours of an estimate on the days of a calendar. Minutes of the clock run from the first shift on. */
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

        Task(String name, boolean whole) {
            this.name = name;
            this.whole = whole;
        }
    }

    private final WorkingTimes times;
    private final double shift;
    private final double workday;
    private final List<Task> tasks;
    private final List<Bar> bars = new ArrayList<>();
    private final double[] crewFree;
    private final double[] bayReady;
    private final int[] next;
    private final Optional<Temperature> waitsFor;
    private double lastEnd;

    Scheduling(Estimate estimate, WorkingTimes times, Optional<Temperature> floor, Parameters parameters) {
        this.times = times;
        this.shift = times.shift().minutes()
                - Job.ofUsual(estimate.job().area(), parameters).percent()
                        / 100
                        * new Numbers(parameters).at("estimate.daily", Case.LIKELY);
        if (shift < 1) {
            throw new InvalidInputException(
                    "times.shift", times.shift().print(), "longer than what beginning and ending a day take");
        }
        this.workday = shift * times.shiftsADay();
        Temperature least = parameters.get("warmth.warm-enough", Temperature.class);
        boolean cold = floor.filter(told -> told.compareTo(least) < 0).isPresent();
        this.tasks = tasks(estimate, cold);
        this.waitsFor = tasks.stream().anyMatch(task -> task.waitsForWarmth) ? Optional.of(least) : Optional.empty();
        this.crewFree = new double[times.crews()];
        this.bayReady = new double[times.bays()];
        this.next = new int[times.bays()];
    }

    private static List<Task> tasks(Estimate estimate, boolean cold) {
        Set<String> curing = estimate.job().others().stream()
                .filter(OtherWork::cures)
                .map(OtherWork::name)
                .collect(Collectors.toSet());
        List<Task> tasks = new ArrayList<>();
        boolean whole = true;
        for (Line line : estimate.lines()) {
            if (line instanceof Line.WorkLine work
                    && work.work() != Work.DAILY
                    && work.elapsed().likely().minutes() > 0) {
                String name = work.subject().orElse(work.work().key());
                if (tasks.isEmpty() || !last(tasks).name.equals(name)) {
                    tasks.add(new Task(name, whole));
                }
                last(tasks).minutes += work.elapsed().likely().minutes();
                whole &= work.work() != Work.TEST_AREA;
            } else if (line instanceof Line.WaitLine wait && !tasks.isEmpty()) {
                last(tasks).wait += wait.hours().likely().minutes();
                last(tasks).waitsForWarmth |= cold
                        && (wait.reason() == Wait.SEALER_CURING
                                || wait.subject().filter(curing::contains).isPresent());
            }
        }
        return tasks;
    }

    private static Task last(List<Task> tasks) {
        return tasks.get(tasks.size() - 1);
    }

    Schedule schedule() {
        double begun = 0;
        int whole = 0;
        while (whole < tasks.size() && tasks.get(whole).whole && begun < NEVER) {
            Task task = tasks.get(whole++);
            begun = work(task, 0, 0, open(begun));
        }
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
        bars.sort(Comparator.comparing(Bar::start).thenComparing(Bar::bay).thenComparing(Bar::isWait));
        return new Schedule(
                new TimeSpan(shift),
                bars,
                bars.stream()
                        .filter(bar -> !bar.isWait())
                        .map(Bar::end)
                        .max(Comparator.naturalOrder())
                        .orElse(new TimeSpan(0)),
                dayOfEnd(lastEnd) + 1,
                waitsFor,
                held(reached));
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

    /** Notes a task and the wait after it; gives the minute from which its bay goes on. */
    private double work(Task task, int bay, int crew, double start) {
        double end = finish(start, part(task));
        note(task.name, bay, crew + 1, start, end);
        if (task.waitsForWarmth) {
            return NEVER;
        }
        double ready = end + task.wait;
        if (task.wait > 0) {
            note(task.name, bay, 0, end, ready);
        }
        return ready;
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
        return times.isWorkday(day) && from - day * DAY < workday - ROUNDING ? from : opening(day + 1);
    }

    private double opening(int from) {
        int day = from;
        while (!times.isWorkday(day)) {
            day++;
        }
        return day * DAY;
    }

    private double finish(double start, double minutes) {
        double now = start;
        double left = minutes;
        while (true) {
            double today = workday - (now - StrictMath.floor(now / DAY) * DAY);
            if (left <= today + ROUNDING) {
                return now + left;
            }
            left -= today;
            now = opening((int) (now / DAY) + 1);
        }
    }

    /** Shift minutes before a minute of the clock. */
    private double worked(double minute) {
        int day = (int) (minute / DAY);
        double worked = 0;
        for (int before = 0; before < day; before++) {
            worked += times.isWorkday(before) ? workday : 0;
        }
        return worked + (times.isWorkday(day) ? Math.min(workday, minute - day * DAY) : 0);
    }
}
