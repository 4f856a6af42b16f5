package stoneprocess.examples.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.estimate.EstimateDifference;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.UnitSystem;

/**
 * Two ways side by side, by their likely figures: what differs line by line, then the totals.
 *
 * @param units the reader's units
 * @param other what the second way is called
 * @param comparison the two ways; empty when the second has no plan that cuts
 * @param noPlan why there is no second way; empty when there is one
 */
public record ComparisonText(
        UnitSystem units, String other, Optional<EstimateComparison> comparison, Optional<String> noPlan) {
    /** Two ways that both have a plan. */
    public static ComparisonText of(UnitSystem units, String other, EstimateComparison comparison) {
        return new ComparisonText(units, other, Optional.of(comparison), Optional.empty());
    }

    /** A second way that cannot be estimated, with the reason. */
    public static ComparisonText without(UnitSystem units, String other, String reason) {
        return new ComparisonText(units, other, Optional.empty(), Optional.of(reason));
    }

    void write(EstimatePage page) {
        noPlan.ifPresent(reason -> {
            page.heading("Compared with " + other);
            page.line("Nothing to compare with: " + reason);
        });
        comparison.ifPresent(both -> write(page, both));
    }

    private void write(EstimatePage page, EstimateComparison both) {
        page.heading("Compared with " + other, List.of("here", "there", "apart"), "");
        int same = lines(page, both.work(), "person-hours ", EstimateText::hours, "h");
        same += lines(page, both.waits(), "wait, ", EstimateText::hours, "h");
        same += consumables(page, both.consumables());
        same += lines(page, both.costs(), "cost of ", EstimateText::money, "");
        if (same > 0) {
            page.item(same + (same == 1 ? " line is" : " lines are") + " the same.");
        }
        row(page, "all person-hours", both.personHours(), EstimateText::hours, "h");
        row(page, "days until used again", both.days(), units::number, "");
        both.total().ifPresent(total -> row(page, "all costs", total, EstimateText::money, currency(total)));
    }

    private static String currency(EstimateDifference<Money> total) {
        return total.by().currency();
    }

    private <T extends Comparable<? super T>> int lines(
            EstimatePage page,
            List<EstimateDifference<T>> lines,
            String before,
            Function<T, String> print,
            String unit) {
        int same = 0;
        for (EstimateDifference<T> line : lines) {
            if (line.direction() == EstimateDifference.Direction.SAME) {
                same++;
            } else {
                row(page, before + EstimateWords.plain(line.line()), line, print, unit);
            }
        }
        return same;
    }

    private int consumables(EstimatePage page, List<EstimateDifference<Quantity>> lines) {
        int same = 0;
        for (EstimateDifference<Quantity> line : lines) {
            if (line.direction() == EstimateDifference.Direction.SAME) {
                same++;
            } else {
                String symbol = units.unitFor(line.by()).symbol();
                row(page, EstimateWords.plain(line.line()), line, units::number, symbol.equals("count") ? "" : symbol);
            }
        }
        return same;
    }

    private static <T extends Comparable<? super T>> void row(
            EstimatePage page, String label, EstimateDifference<T> line, Function<T, String> print, String unit) {
        List<String> figures = new ArrayList<>();
        figures.add(line.first().map(Spread::likely).map(print).orElse("-"));
        figures.add(line.second().map(Spread::likely).map(print).orElse("-"));
        String sign = switch (line.direction()) {
            case LESS -> "-";
            case SAME -> "";
            case MORE -> "+";
        };
        figures.add(sign + print.apply(line.by()));
        page.row(label, figures, unit);
    }
}
