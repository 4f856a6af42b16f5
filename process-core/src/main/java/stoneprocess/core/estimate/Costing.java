package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;

/** Puts a price list's prices on an estimate. */
final class Costing {
    private final PriceList prices;
    private final Estimate estimate;
    private final List<Cost.CostLine> lines = new ArrayList<>();
    private final List<String> unpriced = new ArrayList<>();

    Costing(PriceList prices, Estimate estimate) {
        this.prices = prices;
        this.estimate = estimate;
    }

    Cost cost() {
        double nightFactor = 1
                + estimate.job().site().night().percent()
                        / 100
                        * (prices.nightFactor().percent() / 100 - 1);
        price(PriceItem.LABOUR_HOUR, which -> estimate.personHours().at(which).minutes() / 60 * nightFactor);
        machines();
        for (Bond bond : Bond.values()) {
            pads(StepKind.of(bond), PriceItem.padSet(bond));
        }
        used(ConsumableKind.POWDER, PriceItem.POWDER_KILOGRAM, 1);
        used(ConsumableKind.WATER, PriceItem.WATER_CUBIC_METRE, 1000);
        used(ConsumableKind.SLURRY, PriceItem.SLURRY_CUBIC_METRE, 1000);
        used(ConsumableKind.ENERGY, PriceItem.ENERGY_KILOWATT_HOUR, 1);
        price(PriceItem.MOBILISATION, which -> estimate.job().site().mobilisations());

        Spread<Money> subtotal = new Spread<>(sum(Case.LOW), sum(Case.LIKELY), sum(Case.HIGH));
        Spread<Money> total = new Spread<>(
                atLeastMinimum(subtotal.low()), atLeastMinimum(subtotal.likely()), atLeastMinimum(subtotal.high()));
        return new Cost(
                lines, subtotal, total, total.likely().compareTo(subtotal.likely()) > 0, unpriced, prices.exclusions());
    }

    private void machines() {
        Map<MachineClass, List<JobStep>> byClass = new LinkedHashMap<>();
        for (JobStep step : estimate.job().steps()) {
            byClass.computeIfAbsent(step.machine().kind(), kind -> new ArrayList<>())
                    .add(step);
        }
        byClass.forEach((kind, steps) -> line(
                "machine-hour " + kind.key(),
                prices.machineHour(kind),
                which -> steps.stream()
                                .mapToDouble(step -> estimate.minutes(Work.OPEN_FIELD, step, which)
                                        + estimate.minutes(Work.REWORK, step, which))
                                .sum()
                        / 60));
    }

    private void pads(StepKind kind, PriceItem item) {
        List<String> steps = estimate.job().steps().stream()
                .filter(step -> step.kind() == kind)
                .map(JobStep::name)
                .toList();
        if (!steps.isEmpty()) {
            ConsumableKind counted = prices.wholeSets() ? ConsumableKind.PAD_SETS : ConsumableKind.PAD_WEAR;
            double perSet = prices.wholeSets() ? 1 : 100;
            price(
                    item,
                    which -> estimate.consumables().stream()
                            .filter(line -> line.kind() == counted && steps.contains(line.step()))
                            .mapToDouble(line -> line.amount().at(which).kept() / perSet)
                            .sum());
        }
    }

    private void used(ConsumableKind kind, PriceItem item, double perUnit) {
        Optional<Spread<Quantity>> total = estimate.total(kind);
        total.ifPresent(amount -> price(item, which -> amount.at(which).kept() / perUnit));
    }

    private void price(PriceItem item, ToDoubleFunction<Case> units) {
        line(item.key(), prices.price(item), units);
    }

    private void line(String name, Optional<Money> price, ToDoubleFunction<Case> units) {
        if (price.isEmpty()) {
            unpriced.add(name);
            return;
        }
        lines.add(
                new Cost.CostLine(name, Case.spread(units, number -> price.get().times(number))));
    }

    private Money sum(Case which) {
        Money sum = Money.none(prices.currency());
        for (Cost.CostLine line : lines) {
            sum = sum.plus(line.amount().at(which));
        }
        return sum;
    }

    private Money atLeastMinimum(Money money) {
        return new Money(money.amount().max(prices.minimumCharge()), prices.currency());
    }
}
