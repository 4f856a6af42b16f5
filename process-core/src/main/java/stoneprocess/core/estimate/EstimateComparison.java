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
public record EstimateComparison(
        Estimate first,
        Estimate second,
        List<EstimateDifference<TimeSpan>> work,
        List<EstimateDifference<TimeSpan>> waits,
        List<EstimateDifference<Quantity>> consumables,
        EstimateDifference<TimeSpan> personHours,
        EstimateDifference<Count> days,
        List<EstimateDifference<Money>> costs,
        Optional<EstimateDifference<Money>> total) {
    public EstimateComparison {
        work = List.copyOf(work);
        waits = List.copyOf(waits);
        consumables = List.copyOf(consumables);
        costs = List.copyOf(costs);
    }

    /** Compares without prices. */
    public static EstimateComparison of(Alternative first, Alternative second, Estimator estimator) {
        return of(
                estimator.estimate(first.job(), first.timings()),
                estimator.estimate(second.job(), second.timings()),
                List.of(),
                Optional.empty());
    }

    /** Compares with the costs by one price list. */
    public static EstimateComparison of(Alternative first, Alternative second, Estimator estimator, PriceList prices) {
        Estimate one = estimator.estimate(first.job(), first.timings());
        Estimate other = estimator.estimate(second.job(), second.timings());
        Cost oneCost = prices.cost(one);
        Cost otherCost = prices.cost(other);
        return of(
                one,
                other,
                EstimateDifference.ofLines(costs(oneCost), costs(otherCost), Money::apart),
                Optional.of(EstimateDifference.ofBoth("total", oneCost.total(), otherCost.total(), Money::apart)));
    }

    private static EstimateComparison of(
            Estimate one,
            Estimate other,
            List<EstimateDifference<Money>> costs,
            Optional<EstimateDifference<Money>> total) {
        return new EstimateComparison(
                one,
                other,
                EstimateDifference.ofLines(work(one), work(other), EstimateDifference.apart(TimeSpan.class)),
                EstimateDifference.ofLines(waits(one), waits(other), EstimateDifference.apart(TimeSpan.class)),
                EstimateDifference.ofLines(
                        consumables(one), consumables(other), EstimateDifference.apart(Quantity.class)),
                EstimateDifference.ofBoth(
                        "person-hours",
                        one.personHours(),
                        other.personHours(),
                        EstimateDifference.apart(TimeSpan.class)),
                EstimateDifference.ofBoth(
                        "days", one.calendar().days(), other.calendar().days(), EstimateDifference.apart(Count.class)),
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
