package stoneprocess.core.estimate;

import java.util.List;
import java.util.function.Predicate;
import stoneprocess.core.internal.check.Refuse;

/**
 * What a job costs by a price list.
 *
 * @param lines each priced item that the job needs
 * @param total the lines added up
 * @param unpriced names of what the job needs and the list has no price for; the total leaves it out
 * @param exclusions what the price does not cover, in the price list's words
 */
public record Cost(List<CostLine> lines, Spread<Money> total, List<String> unpriced, List<String> exclusions) {
    public Cost {
        Refuse.nulls(Cost.class, lines, total, unpriced, exclusions);
        lines = List.copyOf(lines);
        unpriced = List.copyOf(unpriced);
        exclusions = List.copyOf(exclusions);
    }

    /** The label of all amounts. */
    public String currency() {
        return total.likely().currency();
    }

    /** What coming and going costs, besides the hours. */
    Spread<Money> travel() {
        return sum(CostLine::isTravel);
    }

    /** All lines but those of {@link #travel}. */
    Spread<Money> work() {
        return sum(line -> !line.isTravel());
    }

    private Spread<Money> sum(Predicate<CostLine> which) {
        return new Spread<>(sum(which, Case.LOW), sum(which, Case.LIKELY), sum(which, Case.HIGH));
    }

    private Money sum(Predicate<CostLine> which, Case figure) {
        return lines.stream()
                .filter(which)
                .map(line -> line.amount().at(figure))
                .reduce(Money.none(currency()), Money::plus);
    }

    /**
     * One item.
     *
     * @param name key of the {@link PriceItem}, {@code machine-hour} and the class of machine, or {@code barrier}
     * @param amount what it costs
     */
    public record CostLine(String name, Spread<Money> amount) {
        public CostLine {
            Refuse.nulls(CostLine.class, name, amount);
        }

        private boolean isTravel() {
            return List.of(PriceItem.MOBILISATION.key(), PriceItem.TRAVEL_KILOMETRE.key())
                    .contains(name);
        }
    }
}
