package stoneprocess.core.estimate;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.MachineClass;

/**
 * The embedder's prices; the library ships none. What has no price is listed as unpriced in the cost, never taken as
 * free of charge.
 *
 * @param currency label of all prices
 * @param prices price of each item
 * @param machineHours price of an hour of each class of machine
 * @param minimumCharge least that a job costs; zero for none
 * @param nightFactor price of labour at night over that by day, 100 % or more
 * @param wholeSets whether begun sets of pads are charged whole; otherwise by wear
 * @param exclusions what the price does not cover, in the embedder's words
 */
public record PriceList(
        String currency,
        Map<PriceItem, Money> prices,
        Map<MachineClass, Money> machineHours,
        Money minimumCharge,
        Share nightFactor,
        boolean wholeSets,
        List<String> exclusions) {
    public PriceList {
        prices = Collections.unmodifiableMap(new LinkedHashMap<>(prices));
        machineHours = Collections.unmodifiableMap(new LinkedHashMap<>(machineHours));
        exclusions = List.copyOf(exclusions);
        requireCurrency(currency, minimumCharge);
        prices.values().forEach(price -> requireCurrency(currency, price));
        machineHours.values().forEach(price -> requireCurrency(currency, price));
        if (nightFactor.percent() < 100) {
            throw new InvalidInputException("prices.night-factor", nightFactor.print(), "100 % or more");
        }
    }

    private static void requireCurrency(String currency, Money price) {
        if (!price.currency().equals(currency)) {
            throw new InvalidInputException("prices.currency", price.currency(), "the list's currency, " + currency);
        }
    }

    /** A list without any price, minimum charge, night surcharge or exclusion, pads by wear. */
    public static PriceList empty(String currency) {
        return new PriceList(currency, Map.of(), Map.of(), Money.none(currency), new Share(100), false, List.of());
    }

    /** The same list with a price for an item, in the list's currency. */
    public PriceList with(PriceItem item, String amount) {
        Map<PriceItem, Money> changed = new LinkedHashMap<>(prices);
        changed.put(item, Money.of(amount, currency));
        return new PriceList(currency, changed, machineHours, minimumCharge, nightFactor, wholeSets, exclusions);
    }

    /** The same list with a price for an hour of a class of machine. */
    public PriceList withMachineHour(MachineClass machine, String amount) {
        Map<MachineClass, Money> changed = new LinkedHashMap<>(machineHours);
        changed.put(machine, Money.of(amount, currency));
        return new PriceList(currency, prices, changed, minimumCharge, nightFactor, wholeSets, exclusions);
    }

    /** The same list with a minimum charge. */
    public PriceList withMinimumCharge(String amount) {
        return new PriceList(
                currency, prices, machineHours, Money.of(amount, currency), nightFactor, wholeSets, exclusions);
    }

    /** The same list with another night factor, 100 % or more. */
    public PriceList withNightFactor(Share factor) {
        return new PriceList(currency, prices, machineHours, minimumCharge, factor, wholeSets, exclusions);
    }

    /** The same list that charges begun sets of pads whole. */
    public PriceList withWholeSets() {
        return new PriceList(currency, prices, machineHours, minimumCharge, nightFactor, true, exclusions);
    }

    /** The same list with exclusions. */
    public PriceList withExclusions(List<String> other) {
        return new PriceList(currency, prices, machineHours, minimumCharge, nightFactor, wholeSets, other);
    }

    /** The price of an item, when the list has one. */
    public Optional<Money> price(PriceItem item) {
        return Optional.ofNullable(prices.get(item));
    }

    /**
     * What an estimated job costs by this list. Labour: person hours, the night share at the night factor. Machines:
     * hours in the open field with rework. The total is not below the minimum charge.
     */
    public Cost cost(Estimate estimate) {
        return new Costing(this, estimate).cost();
    }
}
