package stoneprocess.core.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;

/** Puts a price list's prices on an estimate. */
final class Costing {
    /** What takes a material of its own. */
    private static final Map<PriceItem, Set<String>> MATERIALS = new EnumMap<>(Map.of(
            PriceItem.SEALER_SQUARE_METRE,
            Set.of(OtherWork.SEALING),
            PriceItem.DENSIFIER_SQUARE_METRE,
            Set.of("densify"),
            PriceItem.FILLER_SQUARE_METRE,
            Set.of("fill-cracks", "regrout", "regrout-pits", "semi-rigid-joints", "elastic-joints"),
            PriceItem.STRIPPER_SQUARE_METRE,
            Set.of("strip-coating")));

    /** Name of the work of arranging a supply that can run the machines. */
    private static final String SUPPLY = "arrange-power";

    private final PriceList prices;
    private final List<Cost.CostLine> lines = new ArrayList<>();
    private final List<String> unpriced = new ArrayList<>();

    private Costing(PriceList prices) {
        this.prices = prices;
    }

    /** A job, with the way to the site and back on each working day. */
    static Cost ofJob(PriceList prices, Estimate estimate, boolean hired) {
        Costing costing = new Costing(prices);
        costing.labour(estimate);
        costing.machines(estimate);
        ToDoubleFunction<Case> days =
                which -> estimate.calendar().workingDays().at(which).kept();
        if (hired) {
            costing.price(PriceItem.HIRE_DAY, days);
        }
        if (estimate.job().others().stream().anyMatch(other -> other.name().equals(SUPPLY))) {
            costing.price(PriceItem.SUPPLY_DAY, days);
        }
        for (Bond bond : Bond.values()) {
            costing.pads(estimate, StepKind.of(bond), PriceItem.padSet(bond));
        }
        costing.used(estimate, ConsumableKind.POWDER, PriceItem.POWDER_KILOGRAM, 1);
        costing.used(estimate, ConsumableKind.WATER, PriceItem.WATER_CUBIC_METRE, 1000);
        costing.used(estimate, ConsumableKind.SLURRY, PriceItem.SLURRY_CUBIC_METRE, 1000);
        costing.materials(estimate.job());
        costing.used(estimate, ConsumableKind.ENERGY, PriceItem.ENERGY_KILOWATT_HOUR, 1);
        costing.travel(
                which -> estimate.job().site().mobilisations()
                        + estimate.calendar().returns().at(which).kept(),
                estimate.job().site().distance(),
                days);
        return costing.cost();
    }

    /** One visit without machines. */
    static Cost ofVisit(PriceList prices, Spread<TimeSpan> hours, Optional<Length> distance) {
        Costing costing = new Costing(prices);
        costing.price(PriceItem.LABOUR_HOUR, which -> hours.at(which).minutes() / 60);
        costing.travel(which -> 1, distance, which -> 1);
        return costing.cost();
    }

    private Cost cost() {
        Spread<Money> total = new Spread<>(sum(Case.LOW), sum(Case.LIKELY), sum(Case.HIGH));
        return new Cost(lines, total, unpriced, prices.exclusions());
    }

    /**
     * Hours paid; each person's, or those of the helpers by their own price where the list has one. Whoever watches the
     * barrier is a helper by day, told apart.
     */
    private void labour(Estimate estimate) {
        double nightFactor = 1
                + estimate.job().site().night().percent()
                        / 100
                        * (prices.nightFactor().percent() / 100 - 1);
        ToDoubleFunction<Case> barrier =
                which -> estimate.personHours(Work.BARRIER).at(which).minutes() / 60;
        if (barrier.applyAsDouble(Case.HIGH) > 0) {
            Optional<Money> helper = prices.price(PriceItem.HELPER_HOUR);
            line(Work.BARRIER.key(), helper.isPresent() ? helper : prices.price(PriceItem.LABOUR_HOUR), barrier);
        }
        ToDoubleFunction<Case> all =
                which -> (estimate.paidHours().at(which).minutes() / 60 - barrier.applyAsDouble(which)) * nightFactor;
        if (prices.price(PriceItem.HELPER_HOUR).isEmpty()) {
            price(PriceItem.LABOUR_HOUR, all);
            return;
        }
        ToDoubleFunction<Case> alone =
                which -> all.applyAsDouble(which) / estimate.job().site().people();
        price(PriceItem.LABOUR_HOUR, alone);
        price(PriceItem.HELPER_HOUR, which -> all.applyAsDouble(which) - alone.applyAsDouble(which));
    }

    /** What is laid on or filled in, by the area of the floor; no figure is known for how much of it there is. */
    private void materials(Job job) {
        List<String> works = new ArrayList<>(job.others().stream()
                .map(other -> other.name().split(" ", 2)[0])
                .toList());
        job.sealing().ifPresent(sealing -> works.add(OtherWork.SEALING));
        MATERIALS.forEach((item, of) -> {
            long times = works.stream().filter(of::contains).count();
            if (times > 0) {
                price(item, which -> times * job.area().squareMetres());
            }
        });
    }

    private void travel(ToDoubleFunction<Case> mobilisations, Optional<Length> distance, ToDoubleFunction<Case> days) {
        price(PriceItem.MOBILISATION, mobilisations);
        distance.ifPresent(way -> price(
                PriceItem.TRAVEL_KILOMETRE,
                which -> 2 * way.in(Unit.KILOMETRE).doubleValue() * days.applyAsDouble(which)));
    }

    private void machines(Estimate estimate) {
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

    private void pads(Estimate estimate, StepKind kind, PriceItem item) {
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

    private void used(Estimate estimate, ConsumableKind kind, PriceItem item, double perUnit) {
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
}
