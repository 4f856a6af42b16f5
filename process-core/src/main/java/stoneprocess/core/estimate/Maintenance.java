package stoneprocess.core.estimate;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/**
 * Keeping a floor up over years: polished against coated, for one. How often each task is done the embedder says.
 *
 * @param name what the owner calls it
 * @param area the floor, above zero
 * @param years how long, 1 to 100; a year counts 365 days
 * @param tasks what is done again and again, each name once
 */
public record Maintenance(String name, Area area, int years, List<UpkeepTask> tasks) {
    private static final int DAYS = 365;

    public Maintenance {
        Require.text("maintenance.name", name);
        Require.positive("maintenance.area", area);
        if (years < 1 || years > 100) {
            throw new InvalidInputException("maintenance.years", Integer.toString(years), "1 to 100 years");
        }
        tasks = List.copyOf(tasks);
        Set<String> names = new HashSet<>();
        for (UpkeepTask task : tasks) {
            if (!names.add(task.name())) {
                throw new InvalidInputException("maintenance.tasks", task.name(), "each name once");
            }
        }
    }

    /**
     * One task over the years.
     *
     * @param task what is done
     * @param times how many times, whole intervals only
     * @param hours hours of one person, all times together
     * @param material what the material costs, all times together; empty without a price
     */
    public record UpkeepLine(UpkeepTask task, Count times, TimeSpan hours, Optional<Money> material) {}

    /** Each task over the years: times = years / interval, hours = times area / rate. */
    public List<UpkeepLine> lines() {
        return tasks.stream().map(this::line).toList();
    }

    private UpkeepLine line(UpkeepTask task) {
        double span = TimeSpan.of((double) years * DAYS, Unit.DAY).minutes();
        double times = StrictMath.floor(span / task.every().minutes());
        return new UpkeepLine(
                task,
                new Count(times),
                new TimeSpan(60 * times * area.squareMetres() / task.rate().squareMetresPerHour()),
                task.material().map(price -> price.times(times * area.squareMetres())));
    }

    /** Hours of one person, all tasks together. */
    public TimeSpan hours() {
        return new TimeSpan(
                lines().stream().mapToDouble(line -> line.hours().minutes()).sum());
    }

    /** Labour and material of all tasks at a price for an hour; material without a price is left out. */
    public Money cost(Money labourHour) {
        Money sum = labourHour.times(hours().minutes() / 60);
        for (UpkeepLine line : lines()) {
            if (line.material().isPresent()) {
                sum = sum.plus(line.material().get());
            }
        }
        return sum;
    }

    /**
     * The hours of another way to keep the same floor, task by task, against this one.
     *
     * @throws InvalidInputException when the other is for another area or other years
     */
    public List<Difference<TimeSpan>> compare(Maintenance other) {
        requireSameFloor(other);
        return Difference.ofLines(hoursByTask(), other.hoursByTask(), Difference.apart(TimeSpan.class));
    }

    /**
     * The cost of another way to keep the same floor against this one, by {@link #cost}.
     *
     * @throws InvalidInputException when the other is for another area or other years
     */
    public Difference<Money> compareCost(Maintenance other, Money labourHour) {
        requireSameFloor(other);
        return Difference.ofBoth("total", certain(cost(labourHour)), certain(other.cost(labourHour)), Money::apart);
    }

    private void requireSameFloor(Maintenance other) {
        if (!area.equals(other.area) || years != other.years) {
            throw new InvalidInputException(
                    "maintenance",
                    other.area.print() + ", " + other.years + " years",
                    "the same floor and years: " + area.print() + ", " + years + " years");
        }
    }

    private static <T extends Comparable<? super T>> Spread<T> certain(T value) {
        return new Spread<>(value, value, value);
    }

    private Map<String, Spread<TimeSpan>> hoursByTask() {
        Map<String, Spread<TimeSpan>> hours = new LinkedHashMap<>();
        lines().forEach(line -> hours.put(line.task().name(), certain(line.hours())));
        return hours;
    }
}
