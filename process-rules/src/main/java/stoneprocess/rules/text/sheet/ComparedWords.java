package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.EstimateWords.HOURS;
import static stoneprocess.rules.text.sheet.EstimateWords.NOTHING;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.estimate.EstimateDifference;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Wait;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Wording;

/** Two ways side by side, by their likely figures: what differs line by line, then the totals. */
final class ComparedWords {
    private int same;
    private final Ledger lines = Ledger.headed(
            Stream.of("compared.here", "compared.there", "compared.apart")
                    .map(Wording::phrase)
                    .toList(),
            NOTHING);

    private ComparedWords() {}

    static void write(Draft draft, ComparedWay way) {
        draft.section(phrase("compared.heading").with("name", way.name()));
        way.comparison()
                .ifPresentOrElse(
                        both -> new ComparedWords().write(draft, both), () -> draft.paragraph("compared.no-plan"));
    }

    private void write(Draft draft, EstimateComparison both) {
        lines(both.work(), "compared.work", Work.values(), EstimateWords::tenths, by -> HOURS);
        lines(both.waits(), "compared.wait", Wait.values(), EstimateWords::tenths, by -> HOURS);
        lines(
                both.consumables(),
                "compared.consumable",
                ConsumableKind.values(),
                EstimateWords::number,
                EstimateWords::unit);
        for (EstimateDifference<Money> line : both.costs()) {
            line(
                    line,
                    phrase("compared.cost").with("line", EstimateWords.priced(line.line())),
                    EstimateWords::money,
                    NOTHING);
        }
        draft.add(lines.table());
        if (same > 0) {
            draft.bullet(phrase("compared.same").with("count", same));
        }
        Ledger totals = Ledger.of(3);
        row(totals, phrase("compared.person-hours"), both.personHours(), EstimateWords::tenths, HOURS);
        row(totals, phrase("compared.days"), both.days(), EstimateWords::number, NOTHING);
        both.total()
                .ifPresent(total -> row(
                        totals,
                        phrase("compared.costs"),
                        total,
                        EstimateWords::money,
                        Wording.name(total.by().currency())));
        draft.add(totals.table());
    }

    private <T extends Comparable<? super T>> void lines(
            List<EstimateDifference<T>> differences,
            String key,
            Term[] kinds,
            Function<? super T, Wording> print,
            Function<? super T, Wording> unit) {
        differences.forEach(line -> line(
                line, phrase(key).with("line", EstimateWords.line(line.line(), kinds)), print, unit.apply(line.by())));
    }

    private <T extends Comparable<? super T>> void line(
            EstimateDifference<T> line, Wording label, Function<? super T, Wording> print, Wording unit) {
        if (line.direction() == EstimateDifference.Direction.SAME) {
            same++;
        } else {
            row(lines, label, line, print, unit);
        }
    }

    private static <T extends Comparable<? super T>> void row(
            Ledger ledger,
            Wording label,
            EstimateDifference<T> line,
            Function<? super T, Wording> print,
            Wording last) {
        Wording by = phrase("compared.by." + line.direction().key()).with("by", print.apply(line.by()));
        ledger.row(label, List.of(likely(line.first(), print), likely(line.second(), print), by), last);
    }

    private static <T extends Comparable<? super T>> Wording likely(
            Optional<Spread<T>> figures, Function<? super T, Wording> print) {
        return figures.map(spread -> print.apply(spread.likely())).orElse(Wording.name("-"));
    }
}
