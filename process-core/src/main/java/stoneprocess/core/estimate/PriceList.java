package stoneprocess.core.estimate;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;

/**
 * The embedder's prices; the library ships none. What has no price is listed as unpriced in the cost, never taken as
 * free of charge. Amounts are in the list's currency and in the range of {@link Money}.
 *
 * @param currency label of all prices, not blank
 * @param prices price of each item
 * @param machineHours price of an hour of each class of machine
 * @param minimumCharge least that is asked for a job before tax, whatever it costs the house; zero for none
 * @param nightFactor price of labour at night over that by day, 100 % or more
 * @param wholeSets whether begun sets of pads are charged whole; otherwise by wear
 * @param exclusions what the price does not cover, in the embedder's words
 * @param terms what is added to the cost to make a price of it; empty for a list that reckons costs alone
 */
public record PriceList(
        String currency,
        Map<PriceItem, BigDecimal> prices,
        Map<MachineClass, BigDecimal> machineHours,
        BigDecimal minimumCharge,
        Share nightFactor,
        boolean wholeSets,
        List<String> exclusions,
        Optional<PriceTerms> terms) {
    /** The version of the JSON form. */
    public static final String FORMAT = "price-list/1";

    /**
     * Checks the amounts and rounds them to 0.0001.
     *
     * @throws InvalidInputException for a blank currency, an amount outside the range and a night factor below 100 %
     */
    public PriceList {
        Refuse.nulls(PriceList.class, currency, prices, machineHours, minimumCharge, nightFactor, exclusions, terms);
        Require.text("currency", currency);
        prices = amounts("prices", prices);
        machineHours = amounts("machine-hours", machineHours);
        minimumCharge = Money.amount("minimum-charge", minimumCharge);
        exclusions = List.copyOf(exclusions);
        if (nightFactor.percent() < 100) {
            throw new InvalidInputException("night-factor", nightFactor.print(), "100 % or more");
        }
    }

    private static <K extends Term> Map<K, BigDecimal> amounts(String field, Map<K, BigDecimal> amounts) {
        Map<K, BigDecimal> checked = new LinkedHashMap<>();
        amounts.forEach((key, amount) -> checked.put(key, Money.amount(field + "." + key.key(), amount)));
        return Collections.unmodifiableMap(checked);
    }

    /** A list without any price, minimum charge, night surcharge or exclusion, pads by wear. */
    public static PriceList empty(String currency) {
        return new PriceList(
                currency, Map.of(), Map.of(), BigDecimal.ZERO, new Share(100), false, List.of(), Optional.empty());
    }

    /** The same list with a price for an item, in the list's currency. */
    public PriceList with(PriceItem item, String amount) {
        return new PriceList(
                currency,
                with(prices, item, amount),
                machineHours,
                minimumCharge,
                nightFactor,
                wholeSets,
                exclusions,
                terms);
    }

    /** The same list with a price for an hour of a class of machine. */
    public PriceList withMachineHour(MachineClass machine, String amount) {
        return new PriceList(
                currency,
                prices,
                with(machineHours, machine, amount),
                minimumCharge,
                nightFactor,
                wholeSets,
                exclusions,
                terms);
    }

    private <K> Map<K, BigDecimal> with(Map<K, BigDecimal> amounts, K key, String amount) {
        Map<K, BigDecimal> changed = new LinkedHashMap<>(amounts);
        changed.put(key, Money.of(amount, currency).amount());
        return changed;
    }

    /** The same list with a minimum charge. */
    public PriceList withMinimumCharge(String amount) {
        return new PriceList(
                currency,
                prices,
                machineHours,
                Money.of(amount, currency).amount(),
                nightFactor,
                wholeSets,
                exclusions,
                terms);
    }

    /** The same list with another night factor, 100 % or more. */
    public PriceList withNightFactor(Share factor) {
        return new PriceList(currency, prices, machineHours, minimumCharge, factor, wholeSets, exclusions, terms);
    }

    /** The same list that charges begun sets of pads whole. */
    public PriceList withWholeSets() {
        return new PriceList(currency, prices, machineHours, minimumCharge, nightFactor, true, exclusions, terms);
    }

    /** The same list with exclusions. */
    public PriceList withExclusions(List<String> other) {
        return new PriceList(currency, prices, machineHours, minimumCharge, nightFactor, wholeSets, other, terms);
    }

    /** The same list with terms. */
    public PriceList withTerms(PriceTerms other) {
        return new PriceList(
                currency, prices, machineHours, minimumCharge, nightFactor, wholeSets, exclusions, Optional.of(other));
    }

    /** The price of an item, when the list has one. */
    public Optional<Money> price(PriceItem item) {
        return money(prices.get(item));
    }

    /** The price of an hour of a class of machine, when the list has one. */
    public Optional<Money> machineHour(MachineClass machine) {
        return money(machineHours.get(machine));
    }

    private Optional<Money> money(@Nullable BigDecimal amount) {
        return Optional.ofNullable(amount).map(number -> new Money(number, currency));
    }

    /**
     * What an estimated job costs by this list. Labour: person hours, the night share at the night factor. Machines:
     * hours in the open field with rework. The minimum charge is part of a price and no cost.
     */
    public Cost cost(Estimate estimate) {
        return Costing.ofJob(this, estimate, false);
    }

    /**
     * The price of an estimated job with the house's own machines.
     *
     * @throws InvalidInputException when the list has no terms
     */
    public Price price(Estimate estimate) {
        return price(estimate, false);
    }

    /**
     * The price of an estimated job.
     *
     * @param hired whether its floor machine is hired for the shifts of the job
     * @throws InvalidInputException when the list has no terms
     */
    public Price price(Estimate estimate, boolean hired) {
        Refuse.nulls(PriceList.class, estimate);
        return Price.of(Costing.ofJob(this, estimate, hired), requireTerms(), minimumCharge);
    }

    /**
     * The price of one visit on which hours are worked and no machine; the minimum charge is for jobs and not for visits.
     *
     * @param hours person-hours, with the time on the road
     * @param distance one way to the site; empty where nobody told it
     * @throws InvalidInputException when the list has no terms
     */
    public Price price(Spread<TimeSpan> hours, Optional<Length> distance) {
        Refuse.nulls(PriceList.class, hours, distance);
        return Price.of(Costing.ofVisit(this, hours, distance), requireTerms(), BigDecimal.ZERO);
    }

    /**
     * The terms.
     *
     * @throws InvalidInputException when the list has none
     */
    public PriceTerms requireTerms() {
        return terms.orElseThrow(() -> new InvalidInputException(
                "terms", "none", "a price list with risk, margin, tax, rounding and valid-days under terms"));
    }
}
