package stoneprocess.core.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
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
        Refuse.nulls(
                EstimateComparison.class, first, second, work, waits, consumables, personHours, days, costs, total);
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
        Estimate firstEstimate = estimator.estimate(first.job(), first.timings());
        Estimate secondEstimate = estimator.estimate(second.job(), second.timings());
        Cost firstCost = prices.cost(firstEstimate);
        Cost secondCost = prices.cost(secondEstimate);
        return of(
                firstEstimate,
                secondEstimate,
                EstimateDifference.ofLines(costs(firstCost), costs(secondCost), Money::apart),
                Optional.of(EstimateDifference.ofBoth("total", firstCost.total(), secondCost.total(), Money::apart)));
    }

    private static EstimateComparison of(
            Estimate first,
            Estimate second,
            List<EstimateDifference<Money>> costs,
            Optional<EstimateDifference<Money>> total) {
        BinaryOperator<TimeSpan> hours = EstimateDifference.apart(TimeSpan.class);
        return new EstimateComparison(
                first,
                second,
                EstimateDifference.ofLines(work(first), work(second), hours),
                EstimateDifference.ofLines(waits(first), waits(second), hours),
                EstimateDifference.ofLines(
                        consumables(first), consumables(second), EstimateDifference.apart(Quantity.class)),
                EstimateDifference.ofBoth("person-hours", first.personHours(), second.personHours(), hours),
                EstimateDifference.ofBoth(
                        "days",
                        first.calendar().days(),
                        second.calendar().days(),
                        EstimateDifference.apart(Count.class)),
                costs,
                total);
    }

    private static Map<String, Spread<TimeSpan>> work(Estimate estimate) {
        return byName(
                estimate.work().stream()
                        .filter(line -> line.personHours().high().minutes() > 0),
                Line.WorkLine::name,
                Line.WorkLine::personHours);
    }

    private static Map<String, Spread<TimeSpan>> waits(Estimate estimate) {
        return byName(Estimate.lines(estimate.lines(), Line.WaitLine.class), Line.WaitLine::name, Line.WaitLine::hours);
    }

    private static Map<String, Spread<Quantity>> consumables(Estimate estimate) {
        return byName(estimate.consumables().stream(), Consumable::name, Consumable::amount);
    }

    private static Map<String, Spread<Money>> costs(Cost cost) {
        return byName(cost.lines().stream(), Cost.CostLine::name, Cost.CostLine::amount);
    }

    private static <L, T extends Comparable<? super T>> Map<String, Spread<T>> byName(
            Stream<L> lines, Function<L, String> name, Function<L, Spread<T>> figures) {
        Map<String, Spread<T>> byName = new LinkedHashMap<>();
        lines.forEach(line -> byName.put(name.apply(line), figures.apply(line)));
        return byName;
    }
}
