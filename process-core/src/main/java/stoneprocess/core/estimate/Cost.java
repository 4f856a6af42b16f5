package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;

/**
 * What a job costs by a price list.
 *
 * @param lines each priced item that the job needs
 * @param subtotal the lines added up
 * @param total the subtotal, or the minimum charge where that is more
 * @param minimumCharged whether the likely total is the minimum charge
 * @param unpriced names of what the job needs and the list has no price for; the total leaves it out
 * @param exclusions what the price does not cover, in the price list's words
 */
public record Cost(
        List<CostLine> lines,
        Spread<Money> subtotal,
        Spread<Money> total,
        boolean minimumCharged,
        List<String> unpriced,
        List<String> exclusions) {
    public Cost {
        Refuse.nulls(Cost.class, lines, subtotal, total, unpriced, exclusions);
        lines = List.copyOf(lines);
        unpriced = List.copyOf(unpriced);
        exclusions = List.copyOf(exclusions);
    }

    /**
     * One item.
     *
     * @param name key of the {@link PriceItem}, or {@code machine-hour} and the class of machine
     * @param amount what it costs
     */
    public record CostLine(String name, Spread<Money> amount) {
        public CostLine {
            Refuse.nulls(CostLine.class, name, amount);
        }
    }
}
