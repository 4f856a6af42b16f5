package stoneprocess.core.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Two ways to do a job, line by line: a finer finish, another machine, powder against pads.
 *
 * @param first estimate of the first option
 * @param second estimate of the second option
 * @param work person hours of each line of work
 * @param waits hours of each wait
 * @param consumables each consumable of each step
 * @param personHours all person hours
 * @param days days until the floor is used again
 * @param costs each item of a price list; none without a list
 * @param total the totals by the price list; empty without one
 */
public record Comparison(
        Estimate first,
        Estimate second,
        List<Difference<TimeSpan>> work,
        List<Difference<TimeSpan>> waits,
        List<Difference<Quantity>> consumables,
        Difference<TimeSpan> personHours,
        Difference<Count> days,
        List<Difference<Money>> costs,
        Optional<Difference<Money>> total) {
    public Comparison {
        work = List.copyOf(work);
        waits = List.copyOf(waits);
        consumables = List.copyOf(consumables);
        costs = List.copyOf(costs);
    }

    /** Compares without prices. */
    public static Comparison of(Option first, Option second, Estimator estimator) {
        return of(
                estimator.estimate(first.job(), first.timings()),
                estimator.estimate(second.job(), second.timings()),
                List.of(),
                Optional.empty());
    }

    /** Compares with the costs by one price list. */
    public static Comparison of(Option first, Option second, Estimator estimator, PriceList prices) {
        Estimate one = estimator.estimate(first.job(), first.timings());
        Estimate other = estimator.estimate(second.job(), second.timings());
        Cost oneCost = prices.cost(one);
        Cost otherCost = prices.cost(other);
        return of(
                one,
                other,
                Difference.ofLines(costs(oneCost), costs(otherCost), Money::apart),
                Optional.of(Difference.ofBoth("total", oneCost.total(), otherCost.total(), Money::apart)));
    }

    private static Comparison of(
            Estimate one, Estimate other, List<Difference<Money>> costs, Optional<Difference<Money>> total) {
        return new Comparison(
                one,
                other,
                Difference.ofLines(work(one), work(other), Difference.apart(TimeSpan.class)),
                Difference.ofLines(waits(one), waits(other), Difference.apart(TimeSpan.class)),
                Difference.ofLines(consumables(one), consumables(other), Difference.apart(Quantity.class)),
                Difference.ofBoth(
                        "person-hours", one.personHours(), other.personHours(), Difference.apart(TimeSpan.class)),
                Difference.ofBoth(
                        "days", one.calendar().days(), other.calendar().days(), Difference.apart(Count.class)),
                costs,
                total);
    }

    private static Map<String, Spread<TimeSpan>> work(Estimate estimate) {
        Map<String, Spread<TimeSpan>> lines = new LinkedHashMap<>();
        estimate.work().forEach(line -> lines.put(line.name(), line.personHours()));
        return lines;
    }

    private static Map<String, Spread<TimeSpan>> waits(Estimate estimate) {
        Map<String, Spread<TimeSpan>> lines = new LinkedHashMap<>();
        for (Line line : estimate.lines()) {
            if (line instanceof Line.WaitLine wait) {
                lines.put(wait.name(), wait.hours());
            }
        }
        return lines;
    }

    private static Map<String, Spread<Quantity>> consumables(Estimate estimate) {
        Map<String, Spread<Quantity>> lines = new LinkedHashMap<>();
        estimate.consumables().forEach(line -> lines.put(line.name(), line.amount()));
        return lines;
    }

    private static Map<String, Spread<Money>> costs(Cost cost) {
        Map<String, Spread<Money>> lines = new LinkedHashMap<>();
        cost.lines().forEach(line -> lines.put(line.name(), line.amount()));
        return lines;
    }
}
